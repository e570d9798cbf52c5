// Compose as one types: the form is sent, and what comes back is laid into the page without touching the field at hand.
const { Idiomorph, htmx } = window;
const live = document.getElementById('live');
const place = live && 'stillroom:' + live.getAttribute('hx-post');
let typed = 0; // counts what was typed, to know whether an answer still fits
let sent = 0;
let pressed = '';

// What a reader opened stays open, the field at hand stays as it is, and as long as there is no plan the last one stays in sight.
Idiomorph.defaults.ignoreActiveValue = true;
Idiomorph.defaults.callbacks.beforeAttributeUpdated = (name, node) => !(name === 'open' && node.tagName === 'DETAILS');
Idiomorph.defaults.callbacks.beforeNodeMorphed = (before, after) => {
  if (!before.dataset || !after.dataset || before.dataset.result !== 'true' && before.id !== 'triangle') return true;
  const keeps = after.dataset.result === 'false';
  before.classList.toggle('is-stale', keeps);
  return !keeps;
};

const form = () => document.getElementById('compose');

function keep() {
  const fields = [...new FormData(form())].filter(([name, value]) => typeof value === 'string' && !['token', 'request'].includes(name));
  localStorage.setItem(place, JSON.stringify(fields));
}

document.addEventListener('input', event => {
  if (!event.target.closest('#compose')) return;
  typed++;
  keep();
});

// A press changes the form in place; saving and going back leave the page.
document.addEventListener('submit', event => {
  const deed = event.submitter && event.submitter.name === 'do' && event.submitter.value;
  if (event.target !== form() || ['save', 'discard'].includes(deed)) return;
  event.preventDefault();
  pressed = deed || 'work';
  typed++;
  htmx.ajax('POST', live.getAttribute('hx-post'), { source: live, target: '#compose', swap: 'morph:outerHTML', values: { do: pressed } });
}, true);

document.addEventListener('htmx:beforeRequest', event => {
  if (event.detail.elt === live) sent = typed;
});
document.addEventListener('htmx:beforeSwap', event => {
  // Something was typed meanwhile: this answer is of yesterday, and the next is on its way.
  if (event.detail.requestConfig.elt === live && typed !== sent) event.detail.shouldSwap = false;
});
document.addEventListener('htmx:afterSwap', event => {
  if (event.detail.requestConfig.elt !== live) return;
  localStorage.removeItem(place);
  if (pressed === 'add:lines' || pressed === 'add-lot') {
    const lines = document.querySelectorAll('.lines .use input');
    if (lines.length) lines[lines.length - 1].focus();
  }
  pressed = '';
  speak();
});

// Speaks once typing stops.
let pause = 0;
function speak() {
  clearTimeout(pause);
  pause = setTimeout(() => {
    const asks = document.querySelector('#compose .refusal');
    const said = asks ? asks.textContent : [...document.querySelectorAll('#reading > *')].map(each => each.textContent).join(', ');
    document.getElementById('spoken').textContent = said.replace(/\s+/g, ' ').trim();
  }, 900);
}

// Something is here that the studio never got, as after a crash: it goes back into the fields and is sent.
function putBack() {
  const kept = localStorage.getItem(place);
  localStorage.removeItem(place);
  if (!kept) return;
  const fields = new Map(JSON.parse(kept));
  if (fields.get('based-on') !== form().elements.namedItem('based-on').value) return;
  let changed = false;
  for (const [name, value] of fields) {
    const field = form().elements.namedItem(name);
    if (field && field.type !== 'hidden' && field.value !== value) {
      field.value = value;
      changed = true;
    }
  }
  if (changed) {
    typed++;
    htmx.trigger(live, 'stillroom:again');
  }
}

if (live) {
  putBack();
  // A page that comes back from the browser's memory may be of before a save.
  addEventListener('pageshow', event => { if (event.persisted) location.reload(); });
}
