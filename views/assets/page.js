// Only improves: every page works without it.
(() => {
  // Opened workings stay open when one comes back, and take the whole width.
  const place = `open ${location.pathname}`;
  const remembered = () => {
    try {
      return JSON.parse(sessionStorage.getItem(place)) || [];
    } catch (_) {
      return [];
    }
  };
  const remember = (names) => {
    try {
      sessionStorage.setItem(place, JSON.stringify(names));
    } catch (_) {
      // A full or forbidden store forgets; nothing else is lost.
    }
  };
  const folds = Array.from(document.querySelectorAll('.figure > details'));
  const nameOf = (fold) => fold.parentNode.id;
  const open = remembered();
  for (const fold of folds) {
    if (open.includes(nameOf(fold)) || `#${nameOf(fold)}` === location.hash) fold.open = true;
    fold.parentNode.classList.toggle('is-open', fold.open);
    fold.addEventListener('toggle', () => {
      fold.parentNode.classList.toggle('is-open', fold.open);
      remember(folds.filter((one) => one.open).map(nameOf));
    });
  }

  // Ask once more before what cannot be taken back; send each form once.
  const sent = new Set();
  document.addEventListener('submit', (event) => {
    const form = event.target;
    const question = form.getAttribute('data-confirm');
    if (sent.has(form) || (question && !window.confirm(question))) {
      event.preventDefault();
      return;
    }
    if (form.method !== 'post') return;
    sent.add(form);
    setTimeout(() => sent.delete(form), 8000);
  });
  window.addEventListener('pageshow', () => sent.clear());

  // Start at the first field that needs another look.
  const amiss = document.querySelector('[aria-invalid="true"], fieldset.has-problem input');
  if (amiss) amiss.focus();

  // The page at the machine keeps the screen lit, where the browser lets it.
  if (document.querySelector('[data-keep-awake]') && navigator.wakeLock) {
    const light = () => {
      if (document.visibilityState === 'visible') navigator.wakeLock.request('screen').catch(() => undefined);
    };
    document.addEventListener('visibilitychange', light);
    light();
  }

  for (const button of document.querySelectorAll('[data-print]')) {
    button.hidden = false;
    button.addEventListener('click', () => window.print());
  }
})();
