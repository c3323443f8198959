// Before the first paint, so that a chosen dark page never flashes light.
try {
  const theme = localStorage.getItem("theme");
  if (theme) document.documentElement.dataset.theme = theme;
} catch {
  // Storage is closed to this page: it follows the system.
}
