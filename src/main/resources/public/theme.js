// Before the first paint, so that a chosen dark page never flashes light.
try {
  const theme = localStorage.getItem("theme");
  if (theme) document.documentElement.dataset.theme = theme;
} catch {
  // Storage is closed to this page: it follows the system.
}

// Before the other scripts: the first keys of a scan are kept for them.
var early = [];
var hearEarly = (event) => {
  const { ctrlKey, key, target, timeStamp } = event;
  const isScan = early.length > 7 && timeStamp - early[0].timeStamp < 25 * early.length;
  if ((ctrlKey && early.length) || (isScan && /^(Enter|Tab)$/.test(key))) event.preventDefault();
  event.was = target.value;
  early.push(event);
};
addEventListener("keydown", hearEarly, true);
addEventListener("keyup", hearEarly, true);
