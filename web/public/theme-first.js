// Before anything is painted: a white flash in the wings blinds the people who stand there.
(() => {
  const root = document.documentElement;
  const dark = matchMedia('(prefers-color-scheme: dark)').matches;
  let kept = null;
  try {
    kept = JSON.parse(localStorage.getItem('counterpoise.light') ?? 'null');
  } catch {
    kept = null;
  }
  root.dataset.theme = kept?.theme ?? (dark ? 'dim' : 'day');
  root.dataset.level = String(kept?.level ?? 1);
})();
