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
  say(document.body.dataset.away);
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
  say(document.body.dataset.back, 4000);
  dispatchEvent(new Event('stillroom:back'));
}

/** Says something at the top of the page; a bar without text is not seen. */
function say(text, milliseconds = 0) {
  watch.textContent = text;
  if (milliseconds) setTimeout(() => { if (watch.textContent === text) watch.textContent = ''; }, milliseconds);
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

document.addEventListener('htmx:responseError', event => {
  if (event.detail.xhr.status >= 500) say(document.body.dataset.failed, 8000);
});

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

// What is typed into a form with data-keep outlives a closed tab, a reload and a studio that is away: it is kept in this
// browser until the studio says that the change was done (cookie stillroom-done, which holds the change's name).
const WEEK = 7 * 24 * 3600 * 1000; // how long it is kept, in milliseconds
const done = /(?:^|; )stillroom-done=([\w-]+)/.exec(document.cookie)?.[1];
if (done) {
  document.cookie = 'stillroom-done=; path=/; max-age=0; samesite=strict';
  for (const place of Object.keys(localStorage).filter(each => each.startsWith('stillroom:'))) {
    if (kept(place)?.request === done) localStorage.removeItem(place);
  }
}

function kept(place) {
  try {
    return JSON.parse(localStorage.getItem(place));
  } catch {
    return null;
  }
}

function fields(form) {
  return [...form.elements].filter(field => field.name && !['hidden', 'password', 'file', 'submit', 'button'].includes(field.type));
}

/** What the form is about: a draft of another version of the same thing is not put back over it. */
function about(form) {
  return [...form.elements].filter(field => field.type === 'hidden' && !['token', 'request'].includes(field.name))
    .map(field => field.name + '=' + field.value).join('&');
}

function typed(form) {
  return fields(form).map(field => ['checkbox', 'radio'].includes(field.type) ? field.checked : field.value);
}

function putBack(form, values) {
  fields(form).forEach((field, i) => {
    if (['checkbox', 'radio'].includes(field.type)) field.checked = values[i];
    else field.value = values[i];
  });
}

function keep(form) {
  const place = 'stillroom:' + location.pathname + ':' + (form.id || form.getAttribute('action'));
  const name = form.elements.request;
  const fresh = JSON.stringify(typed(form));
  const draft = kept(place);
  const stale = draft && (draft.about !== about(form) || Date.now() - draft.at > WEEK
    || draft.values.length !== fields(form).length);
  if (draft && !stale && JSON.stringify(draft.values) !== fresh) {
    putBack(form, draft.values);
    name.value = draft.request; // sending it again does it once
    say(document.body.dataset.kept, 8000);
    form.dispatchEvent(new Event('input', { bubbles: true }));
  } else if (draft) {
    localStorage.removeItem(place);
  }
  form.addEventListener('input', () => {
    try {
      localStorage.setItem(place, JSON.stringify({ request: name.value, about: about(form), at: Date.now(), values: typed(form) }));
    } catch { /* the browser keeps nothing; the page still works */ }
  });
}

document.querySelectorAll('form[data-keep]').forEach(keep);

// The screen stays awake where the page asks for it and the browser allows it (only in a secure context).
if (document.querySelector('[data-awake]') && 'wakeLock' in navigator) {
  const hold = () => navigator.wakeLock.request('screen').catch(() => {});
  hold();
  document.addEventListener('visibilitychange', () => { if (document.visibilityState === 'visible') hold(); });
}
