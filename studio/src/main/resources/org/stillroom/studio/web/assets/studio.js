// What every page does: carries the token, watches the connection, keeps what is typed until it is sent.
const token = document.querySelector('meta[name="form-token"]').content;
const watch = document.getElementById('watch');
const waiting = new Map(); // what to do again when the studio answers: one entry per place
let away = false;
let timer = 0;

export function request() {
  return crypto.randomUUID ? crypto.randomUUID()
    : [...crypto.getRandomValues(new Uint8Array(16))].map(b => b.toString(16).padStart(2, '0')).join('');
}

/** Sends a change; resolves with the answer, rejects when the studio is away. */
export function send(path, body, name = request()) {
  return fetch(path, { method: 'POST', body, headers: { 'X-Form-Token': token, 'Idempotency-Key': name, 'HX-Request': 'true' } });
}

/** Says that the studio is away, and asks it again and again; then does what waited. */
export function later(place, again) {
  waiting.set(place, again);
  if (away) return;
  away = true;
  watch.textContent = document.body.dataset.away;
  watch.hidden = false;
  dispatchEvent(new Event('stillroom:away'));
  ask(500);
}

function ask(wait) {
  clearTimeout(timer);
  timer = setTimeout(async () => {
    try {
      const answer = await fetch('/health', { cache: 'no-store' });
      if (!answer.ok) throw new Error('not well');
      await back();
    } catch {
      ask(Math.min(5000, wait * 1.5));
    }
  }, wait);
}

async function back() {
  for (const [place, again] of [...waiting]) {
    await again();
    waiting.delete(place);
  }
  away = false;
  watch.textContent = document.body.dataset.back;
  dispatchEvent(new Event('stillroom:back'));
  setTimeout(() => { if (!away) watch.hidden = true; }, 4000);
}

addEventListener('online', () => { if (away) ask(0); });

// htmx: the token on every request; what cannot be sent is asked again later.
document.addEventListener('htmx:configRequest', event => {
  event.detail.headers['X-Form-Token'] = token;
});
for (const kind of ['htmx:sendError', 'htmx:timeout']) {
  document.addEventListener(kind, event => {
    const source = event.detail.elt;
    later(source, async () => { source.dispatchEvent(new Event('stillroom:again', { bubbles: true })); });
  });
}

// A form that leaves the page is sent only when the studio answers, and only once.
document.addEventListener('submit', async event => {
  const form = event.target;
  if (form.method !== 'post' || form.hasAttribute('hx-post') || form.dataset.sure === 'yes' || event.defaultPrevented) return;
  event.preventDefault();
  const submitter = event.submitter;
  const go = async () => {
    form.dataset.sure = 'yes';
    form.requestSubmit(submitter || undefined);
    setTimeout(() => delete form.dataset.sure, 1000);
  };
  try {
    const answer = await fetch('/health', { cache: 'no-store' });
    if (!answer.ok) throw new Error('not well');
    await go();
  } catch {
    later(form, go);
  }
});

// The screen stays awake where the page asks for it and the browser allows it (only in a secure context).
if (document.querySelector('[data-awake]') && 'wakeLock' in navigator) {
  const hold = () => navigator.wakeLock.request('screen').catch(() => {});
  hold();
  document.addEventListener('visibilitychange', () => { if (document.visibilityState === 'visible') hold(); });
}
