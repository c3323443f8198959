// What pages do beyond plain forms: hear a hand scanner, sound its answer, stay up to date, obey a few keys.
(() => {
	"use strict";

	const $ = (selector, root = document) => root.querySelector(selector);
	const $$ = (selector, root = document) => [...root.querySelectorAll(selector)];
	const keptIn = (area) => ({
		get: (key) => {
			try { return window[area].getItem(key); } catch { return null; }
		},
		set: (key, value) => {
			try { window[area].setItem(key, value); } catch { /* the choice lasts for this page only */ }
		},
	});
	const store = keptIn("localStorage");
	const session = keptIn("sessionStorage");
	const isOn = (name) => store.get(name) !== "off";
	const isEditable = (node) =>
		node.isContentEditable || node.matches?.("textarea, select, input:not([type=radio], [type=checkbox], [type=button], [type=submit])");

	const tell = (what) => {
		const notice = $("#notice");
		notice.textContent = what ? notice.dataset[what] : "";
		notice.hidden = !what;
	};

	// Sounds: two rising notes for accepted, one low buzz for refused.
	let audio;
	const wake = () => {
		audio ??= new AudioContext();
		if (audio.state === "suspended") audio.resume();
	};
	const note = (pitch, start, length, shape) => {
		const tone = audio.createOscillator();
		const volume = audio.createGain();
		const from = audio.currentTime + start;
		tone.type = shape;
		tone.frequency.value = pitch;
		volume.gain.setValueAtTime(0.25, from);
		volume.gain.setTargetAtTime(0, from + length, 0.02);
		tone.connect(volume).connect(audio.destination);
		tone.start(from);
		tone.stop(from + length + 0.15);
	};
	const sound = (root) => {
		const kind = (root.matches?.("[data-sound]") ? root : $("[data-sound]", root))?.dataset.sound;
		if (!kind || !isOn("sounds") || !window.AudioContext || !(navigator.userActivation?.hasBeenActive ?? true)) return;
		wake();
		if (kind === "accepted") {
			note(880, 0, 0.08, "sine");
			note(1320, 0.1, 0.12, "sine");
		} else {
			note(150, 0, 0.2, "square");
			note(150, 0.28, 0.3, "square");
		}
	};

	// Scanner: a burst of keys far faster than fingers, ended by Enter, wherever the focus is.
	// A busy computer may deliver one key late; a scan that lost its first characters could name another item.
	const MOST_MILLIS_BETWEEN = 400;
	const MOST_MILLIS_ON_AVERAGE = 45;
	const LEAST_CHARACTERS = 4;
	const CHORDS = { BracketRight: "\x1d", Digit6: "\x1e", KeyD: "\x04", Backslash: "\x1c", Minus: "\x1f" };
	const KEYS = { F8: "\x1d", F9: "\x1e", F4: "\x04", ArrowDown: "\x1d", ArrowLeft: "\x1e" };
	const LABEL = /^.{0,2}\[\)|[\x1d\x1e]/;
	let burst = null;
	let last = { at: -1e9 };
	let alt = "";
	let silence;

	const characterOf = ({ key, code, ctrlKey, altKey, metaKey, shiftKey }, fast) => {
		if (metaKey || (altKey && !ctrlKey)) return "";
		if (ctrlKey && !altKey) return fast ? CHORDS[code] ?? "" : "";
		// An accent types nothing by itself: it is told by its place.
		if (code && /^(Dead|Unidentified)?$/.test(key)) return String.fromCharCode(57344 + 256 * code.length + 128 * shiftKey + code.at(-1).charCodeAt());
		return key.length === 1 ? key : fast ? KEYS[key] ?? "" : "";
	};
	const isFast = (now) => burst && now - burst.last <= MOST_MILLIS_BETWEEN;
	const hasScan = (now) =>
		isFast(now) && burst.text.length >= LEAST_CHARACTERS
			&& (LABEL.test(burst.text) || (now - burst.first) / burst.text.length <= MOST_MILLIS_ON_AVERAGE);

	const isHalfDone = (form) =>
		[...form.elements].some((field) =>
			field.type === "checkbox" || field.type === "radio" ? field.checked !== field.defaultChecked
				: field.defaultValue !== undefined && field.type !== "hidden" && field.value !== field.defaultValue);

	// A page that is being left hears on: what it hears is told to the page that follows.
	let leaves;
	const heard = () => JSON.parse(session.get("heard") ?? "[]");
	const keepHeard = (scans) => session.set("heard", JSON.stringify(scans));
	const leave = (form) => {
		form.requestSubmit();
		leaves = !form.matches("[hx-get], [hx-post], [data-late]");
		if (leaves) setTimeout(() => { leaves = false; }, 10000);
	};
	addEventListener("pageshow", () => { leaves = false; });

	const fill = (field, text) => {
		field.value = text;
		const fields = [...field.form.elements].filter((other) => other.matches("input:not([type=hidden])"));
		(fields[fields.indexOf(field) + 1] ?? field).focus();
		return true;
	};
	const takeScan = (text) => {
		if (leaves) {
			keepHeard([...heard(), text]);
			return true;
		}
		const own = LABEL.test(text) && $("[data-own-scan]");
		const waiting = !own && $("[data-takes-scan]");
		if (waiting && !$("main form[data-scan]")) return fill(waiting, text);
		const form = own || ($("main form[data-scan]") ?? $("form[data-scan]"));
		const field = form && $("input[name=code]", form);
		if (!field) return false;
		const leavesPage = !form.matches("[hx-get], [hx-post]");
		const isHalf = leavesPage && $$("main form:not([data-scan], [data-own-scan])").some(isHalfDone);
		field.value = text;
		if (isHalf) tell("kept");
		else leave(form);
		return true;
	};
	// What this workstation's scanner means; the scanner check hears it as it comes.
	const meant = (text) => {
		const map = !$("[name=keys]") && document.body.dataset.map || "";
		const half = map.length / 2;
		const told = text.replace(/[^]/g, (one) => {
			const at = map.lastIndexOf(one, half - 1);
			return at < 0 ? one : map[half + at];
		});
		return told !== text && LABEL.test(told) ? "\u2328" + told : told;
	};
	const take = (target, event) => {
		const { field, before, first, last: at, keys } = burst;
		const text = meant(burst.text);
		burst = null;
		clearTimeout(silence);
		const isTwice = text === last.text && first - last.at < 1000;
		last = { text, at };
		if ($("[name=keys]")) $("[name=keys]").value = keys;
		const own = field === target && target.name === "code" && target.closest("[data-scan], [data-own-scan]");
		if (field && field === target) field.value = before;
		if (isTwice) event?.preventDefault();
		else if (own && !leaves) {
			event?.preventDefault();
			target.value = text;
			leave(own);
		} else if (target.matches?.("[data-takes-scan]") && !LABEL.test(text)) {
			event?.preventDefault();
			fill(target, text);
		} else if (takeScan(text)) event?.preventDefault();
	};
	const hear = (character, now, target, key, was = target.value) => {
		if (!isFast(now)) {
			const field = isEditable(target) ? target : null;
			burst = { text: "", keys: "", first: now, field, before: was };
		}
		burst.text += character;
		burst.keys += key + " ";
		burst.last = now;
		clearTimeout(silence);
		if (LABEL.test(burst.text)) silence = setTimeout(() => burst && take(document.activeElement), character === "\x04" ? 100 : 500);
	};

	const press = (event) => {
		const { target, timeStamp: now, key, code, ctrlKey, altKey } = event;
		if (event.repeat || /^(Shift|Control|Alt|AltGraph|CapsLock)$/.test(key)) return;
		if (altKey && /^Numpad\d/.test(code) && isFast(now)) {
			alt += code[6];
			event.preventDefault();
			return;
		}
		const feeds = ctrlKey && /^Key[JM]$/.test(code);
		if (feeds && now - last.at < MOST_MILLIS_BETWEEN) event.preventDefault();
		if (feeds || key === "Enter" || key === "Tab") {
			if (hasScan(now)) take(target, event);
			burst = null;
			return;
		}
		const character = characterOf(event, isFast(now));
		if (!character) {
			burst = null;
			return;
		}
		hear(character, now, target, ctrlKey ? "Ctrl+" + code : code, event.was);
		if ((ctrlKey && !altKey) || KEYS[key] || (burst.text.length > 2 && !isEditable(target))) event.preventDefault();
	};
	const release = ({ key, timeStamp, target, was }) => {
		if (key !== "Alt" || !alt) return;
		hear(String.fromCharCode(alt), timeStamp, target, "Alt+" + alt, was);
		alt = "";
	};
	document.addEventListener("keydown", press, true);
	document.addEventListener("keyup", release);

	// A scan may begin on the page before, and go on before this script starts: theme.js kept those keys.
	addEventListener("pagehide", ({ timeStamp }) => {
		if (isFast(timeStamp) && burst.field?.type !== "password") session.set("burst", JSON.stringify({ ...burst, field: null }));
	});
	const catchUp = () => {
		const kept = JSON.parse(session.get("burst") ?? "null");
		session.set("burst", "null");
		const early = window.early?.splice(0) ?? [];
		removeEventListener("keydown", window.hearEarly, true);
		removeEventListener("keyup", window.hearEarly, true);
		const now = early[0]?.timeStamp ?? performance.now();
		if (kept) burst = { ...kept, first: now - kept.last + kept.first, last: now };
		early.forEach((event) => event.type === "keyup" ? release(event) : press(event));
	};

	// The camera, where the browser reads codes itself.
	const look = async (button) => {
		const video = $("video", button.parentNode);
		const stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment" } });
		const eye = new BarcodeDetector();
		video.srcObject = stream;
		video.hidden = false;
		await video.play();
		const again = async () => {
			const [code] = await eye.detect(video).catch(() => []);
			if (!code) return void setTimeout(again, 200);
			stream.getTracks().forEach((track) => track.stop());
			video.hidden = true;
			takeScan(code.rawValue);
		};
		again();
	};

	// Scans that wait for the network: each keeps its key, time and page's pass, so it is told once, of then, by whom.
	const late = () => JSON.parse(store.get("scans") ?? "[]");
	const showLate = () => {
		const part = $("#late");
		if (!part) return;
		part.hidden = !late().length;
		$("ol", part).replaceChildren(...late().map(({ code, told }) => {
			const line = document.createElement("li");
			line.textContent = `${code}: ${told ?? part.dataset.waits}`;
			return line;
		}));
	};
	const keepLate = (scans) => {
		store.set("scans", JSON.stringify(scans));
		showLate();
	};
	const isLate = () => late().some(({ told }) => !told);
	const wait = (form, { key, code, held }) => {
		keepLate([...late(), { key, code, held, pass: $("#late").dataset.pass, mono: performance.now(), origin: performance.timeOrigin, at: Date.now() }]);
		form.reset();
		form.held.value = "";
		form.key.value = crypto.getRandomValues(new Uint32Array(4)).join("-");
		$("#late").scrollIntoView();
	};
	let isSending;
	const sendLate = async () => {
		if (isSending || !$("#late") || !isLate()) return;
		isSending = true;
		try {
			for (let scan; (scan = late().find(({ told }) => !told));) {
				const age = scan.origin === performance.timeOrigin ? performance.now() - scan.mono : Date.now() - scan.at;
				const body = new URLSearchParams({ ...scan, age: Math.max(0, Math.round(age)), csrf: $("main [name=csrf]").value });
				const answer = await fetch("/stock/late", { method: "POST", body });
				if (!answer.ok || answer.redirected) break;
				const { held, refused } = await answer.json();
				const scans = late();
				const at = scans.findIndex(({ key }) => key === scan.key);
				if (refused) scans[at].told = refused;
				else scans.splice(at, 1);
				const next = scans.find(({ told }) => !told);
				if (next) next.held ||= held;
				keepLate(scans);
				if (!next && held) takeScan(held);
			}
		} catch { /* the network is still gone */ }
		isSending = false;
	};
	setInterval(sendLate, 3000);
	const tellScan = async (code) => {
		const form = $("form[data-scan][data-late]");
		const scan = { ...Object.fromEntries(new FormData(form)), code };
		let answer, text;
		try {
			if (isLate()) return wait(form, scan);
			answer = await fetch("/stock", { method: "POST", body: new URLSearchParams(scan) });
			text = await answer.text();
		} catch { return wait(form, scan); }
		if (answer.redirected) return location.assign(answer.url);
		$("main").replaceWith($("main", new DOMParser().parseFromString(text, "text/html")));
		begin();
	};
	let turn = Promise.resolve();
	document.addEventListener("submit", (event) => {
		const { target, submitter } = event;
		if (!target.matches("[data-late]")) return;
		event.preventDefault();
		const code = submitter?.name ? submitter.value : target.code.value;
		turn = turn.then(() => tellScan(code));
	});

	// Shortcuts: Alt and Shift with a letter, so that no plain typing can set one off.
	document.addEventListener("keydown", (event) => {
		if (!event.altKey || !event.shiftKey || event.ctrlKey || event.metaKey || !isOn("shortcuts")) return;
		const target = $(`[data-key="${event.code}"]`);
		if (!target) return;
		event.preventDefault();
		if (isEditable(target)) target.focus();
		else target.click();
	});
	for (const kind of ["keydown", "pointerdown"]) {
		addEventListener(kind, () => { if (isOn("sounds") && window.AudioContext) wake(); }, { once: true });
	}

	// Live: one stream for all tabs where the browser can share it, else one each; asking now and then if it fails.
	const refresh = (topic) =>
		$$("[data-live]").forEach((part) => {
			const isMeant = part.dataset.live.split(" ").some((wanted) => topic === wanted || topic.startsWith(wanted + "/"));
			if (!topic || isMeant) window.htmx?.trigger(part, "live");
		});
	const listen = () => {
		const tabs = window.BroadcastChannel && new BroadcastChannel("live");
		const pass = (topic) => {
			refresh(topic);
			tabs?.postMessage(topic);
		};
		const open = () => {
			const stream = new EventSource("/live");
			let poll = null;
			stream.addEventListener("changed", (event) => pass(event.data));
			stream.onopen = () => {
				if (poll) pass("");
				clearInterval(poll);
				poll = null;
			};
			stream.onerror = () => {
				poll ??= setInterval(() => {
					if (stream.readyState === EventSource.CLOSED) {
						clearInterval(poll);
						open();
					}
					pass("");
				}, 20000);
			};
		};
		if (tabs) tabs.onmessage = (event) => refresh(event.data);
		if (tabs && navigator.locks) navigator.locks.request("live", () => { open(); return new Promise(() => {}); });
		else open();
	};

	// A choice of theme, sounds, shortcuts is kept by this browser.
	const applyTheme = (theme) => {
		if (theme) document.documentElement.dataset.theme = theme;
		else delete document.documentElement.dataset.theme;
	};
	document.addEventListener("change", ({ target }) => {
		if (target.matches("[data-theme-choice]")) {
			store.set("theme", target.value);
			applyTheme(target.value);
		} else if (target.matches("[data-switch]")) {
			store.set(target.dataset.switch, target.checked ? "on" : "off");
		}
	});

	document.addEventListener("click", (event) => {
		const { target } = event;
		$$("details.menu[open]").forEach((menu) => { if (!menu.contains(target)) menu.open = false; });
		if (target.closest?.("[data-print]")) print();
		else if (target.closest?.("[data-camera]")) look(target.closest("[data-camera]")).catch(() => tell("eye"));
		else if (target.closest?.("[data-seen]")) keepLate(late().filter(({ told }) => !told));
		else if (target.closest?.("[data-back]") && history.length > 1) {
			event.preventDefault();
			history.back();
		}
	});
	document.addEventListener("keydown", (event) => {
		const menu = event.key === "Escape" && $("details.menu[open]");
		if (!menu) return;
		menu.open = false;
		$("summary", menu).focus();
	});

	// A planned run is drawn to another oven or time; its form, which the keyboard uses, says so.
	let held;
	document.addEventListener("pointerdown", ({ target, clientX, clientY }) => {
		held = { run: target.closest?.("[data-run]"), clientX, clientY };
	});
	document.addEventListener("pointerup", ({ clientX, clientY }) => {
		const form = held?.run && document.getElementById(held.run.dataset.run);
		const lane = document.elementsFromPoint(clientX, clientY).find((node) => node.dataset.lane);
		if (!form || !lane || Math.hypot(clientX - held.clientX, clientY - held.clientY) < 9) return;
		const svg = lane.ownerSVGElement;
		form.elements.moveOven.value = lane.dataset.lane;
		form.elements.shift.value = Math.round((clientX - held.clientX) * svg.viewBox.baseVal.width / svg.clientWidth * svg.dataset.minutes);
		form.requestSubmit();
	});

	const begin = () => {
		$$("[data-needs-script]").forEach((part) => { part.hidden = false; });
		$$("[data-theme-choice]").forEach((choice) => { choice.checked = choice.value === (store.get("theme") ?? ""); });
		$$("[data-switch]").forEach((box) => { box.checked = isOn(box.dataset.switch); });
		$$("[data-key]").forEach((part) => part.setAttribute("aria-keyshortcuts", `Alt+Shift+${part.dataset.key.slice(3)}`));
		sound(document.body);
		($(".field.refused :is(input, select, textarea)") ?? $("[data-first]"))?.focus();
		$$("[data-camera]").forEach((part) => { part.hidden = !window.BarcodeDetector; });
		$$("[data-no-camera]").forEach((part) => { part.hidden = !!window.BarcodeDetector; });
		$$("[data-plain]").forEach((part) => { part.hidden = isSecureContext; });
		showLate();
		const [next, ...others] = heard();
		keepHeard(others);
		if (next) takeScan(next);
	};
	if ($("#late")) navigator.serviceWorker?.register("/public/worker.js", { scope: "/" }).then(() => caches.open("page"))
		.then((page) => page.addAll(["/stock", "/public/icon.svg", ...["app.css", "theme.js", "htmx.min.js", "app.js"].map((name) => "/public/" + name)]))
		.catch(() => {});
	if ($("form[action='/sign-in']")) {
		window.caches?.delete("page");
		keepHeard([]);
	}
	document.body.addEventListener("htmx:beforeSwap", ({ detail }) => {
		if (detail.xhr.status === 422) Object.assign(detail, { shouldSwap: true, isError: false });
	});
	document.body.addEventListener("htmx:afterSwap", (event) => { tell(""); sound(event.detail.target); });
	document.body.addEventListener("htmx:responseError", () => tell("failed"));
	document.body.addEventListener("htmx:sendError", () => tell("offline"));
	begin();
	catchUp();
	if ($("[data-live]")) listen();
})();
