// What pages do beyond plain forms: hear a hand scanner, sound its answer, stay up to date, obey a few keys.
(() => {
  "use strict";

  const $ = (selector, root = document) => root.querySelector(selector);
  const $$ = (selector, root = document) => [...root.querySelectorAll(selector)];
  const store = {
    get: (key) => {
      try { return localStorage.getItem(key); } catch { return null; }
    },
    set: (key, value) => {
      try { localStorage.setItem(key, value); } catch { /* the choice lasts for this page only */ }
    },
  };
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
  const SEPARATORS = { "]": "\u001d", "^": "\u001e", 6: "\u001e", d: "\u0004", D: "\u0004" };
  let burst = null;

  const characterOf = (event) => {
    if (event.altKey || event.metaKey) return "";
    if (event.ctrlKey) return burst ? SEPARATORS[event.key] ?? "" : "";
    return event.key.length === 1 ? event.key : "";
  };
  const isFast = (now) => burst && now - burst.last <= MOST_MILLIS_BETWEEN;
  const hasScan = (now) =>
    isFast(now) && burst.text.length >= LEAST_CHARACTERS && (now - burst.first) / burst.text.length <= MOST_MILLIS_ON_AVERAGE;

  const isHalfDone = (form) =>
    [...form.elements].some((field) =>
      field.type === "checkbox" || field.type === "radio" ? field.checked !== field.defaultChecked
        : field.defaultValue !== undefined && field.type !== "hidden" && field.value !== field.defaultValue);

  const fill = (field, text) => {
    field.value = text;
    const fields = [...field.form.elements].filter((other) => other.matches("input:not([type=hidden])"));
    (fields[fields.indexOf(field) + 1] ?? field).focus();
    return true;
  };
  const takeScan = (text) => {
    const waiting = $("[data-takes-scan]");
    if (waiting && !$("main form[data-scan]")) return fill(waiting, text);
    const form = $("main form[data-scan]") ?? $("form[data-scan]");
    const field = form && $("input[name=code]", form);
    if (!field) return false;
    field.value = text;
    const leavesPage = !form.matches("[hx-get], [hx-post]");
    if (leavesPage && $$("main form:not([data-scan])").some(isHalfDone)) tell("kept");
    else form.requestSubmit();
    return true;
  };

  document.addEventListener("keydown", (event) => {
    if (event.repeat || ["Shift", "Control", "Alt"].includes(event.key)) return;
    const target = event.target;
    const now = event.timeStamp;
    if (event.key === "Enter") {
      const scan = hasScan(now) ? burst : null;
      burst = null;
      if (!scan || target.closest?.("[data-scan]")) return;
      if (target.matches?.("[data-takes-scan]")) {
        event.preventDefault();
        fill(target, scan.text);
        return;
      }
      if (scan.field && scan.field === target) target.value = scan.before;
      if (takeScan(scan.text)) event.preventDefault();
      return;
    }
    const character = characterOf(event);
    if (!character) {
      burst = null;
      return;
    }
    if (!isFast(now)) {
      const field = isEditable(target) ? target : null;
      burst = { text: "", first: now, field, before: field?.value };
    }
    burst.text += character;
    burst.last = now;
    if (event.ctrlKey || (burst.text.length > 2 && !isEditable(target))) event.preventDefault();
  }, true);

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
    if ($("[data-live]")) listen();
  };
  document.body.addEventListener("htmx:beforeSwap", ({ detail }) => {
    if (detail.xhr.status === 422) Object.assign(detail, { shouldSwap: true, isError: false });
  });
  document.body.addEventListener("htmx:afterSwap", (event) => { tell(""); sound(event.detail.target); });
  document.body.addEventListener("htmx:responseError", () => tell("failed"));
  document.body.addEventListener("htmx:sendError", () => tell("offline"));
  begin();
})();
