// Compose as one types: the form is sent, and what comes back is laid into the page without touching the field at hand.
import { later, send } from './studio.js';
import { Idiomorph } from './vendor/idiomorph.esm.js';

const live = document.getElementById('live');
const place = live && 'stillroom:' + live.dataset.path;
const form = () => document.getElementById('compose');
const isText = field => field?.matches?.('input, textarea, select') ?? false;

let typed = 0; // counts what was typed, to know whether an answer still fits
let working = false;
let again = false;
const pressed = []; // in the order of the presses; each is done once, whatever is typed meanwhile

/** Keeps what is typed in this browser until the studio has it. */
function keep() {
  const fields = [...new FormData(form())].filter(([name, value]) => typeof value === 'string' && !['token', 'request'].includes(name));
  try {
    localStorage.setItem(place, JSON.stringify(fields));
  } catch { /* the browser keeps nothing; the page still works */ }
}

/** Sends the form now, or once the answer that is awaited has come; returns whether the studio answered. */
async function work() {
  if (working) {
    again = true;
    return true;
  }
  working = true;
  again = false;
  let answered = true;
  const deed = pressed[0] ?? 'work';
  const sent = typed;
  try {
    const body = new URLSearchParams([...new FormData(form())].filter(([name]) => name !== 'do'));
    body.set('do', deed);
    const answer = await send(live.dataset.path, body);
    if (answer.ok) {
      const page = await answer.text();
      if (pressed.length) pressed.shift();
      // Something was typed meanwhile: the answer is of yesterday, and the next is on its way. What was pressed is laid in all the same.
      if (deed !== 'work' || typed === sent) lay(page, deed);
      if (typed === sent) localStorage.removeItem(place);
    } else {
      pressed.length = 0;
    }
  } catch {
    answered = false;
    later(live, async () => { if (!await work()) throw new Error('still away'); });
  }
  working = false;
  if (answered && (again || pressed.length)) work();
  return answered;
}

/** Returns whether a field in here shows something else than the page that came with it. */
function isTouched(node) {
  const fields = isText(node) ? [node] : [...node.querySelectorAll?.('input, textarea, select') ?? []];
  return fields.some(field => 'defaultValue' in field
    ? field.value !== field.defaultValue || field.checked !== field.defaultChecked
    : [...field.options].some(option => option.selected !== option.defaultSelected));
}

/** What a reader opened stays open, the field at hand stays as it is, and as long as there is no plan the last one stays in sight. */
function lay(page, deed) {
  if (!dispatchEvent(new Event('stillroom:lay', { cancelable: true }))) return;
  Idiomorph.morph(form(), page, {
    morphStyle: 'outerHTML',
    ignoreActiveValue: isText(document.activeElement),
    callbacks: {
      beforeAttributeUpdated: (name, node) => !(name === 'open' && node.tagName === 'DETAILS'),
      beforeNodeMorphed: (before, after) => {
        if (before.isEqualNode(after) && !isTouched(before)) return false; // most of the page is as it was: spares the way through it
        if (before.dataset?.result !== 'true') return true;
        const keeps = after.dataset?.result !== 'true';
        before.classList.toggle('is-stale', keeps);
        return !keeps;
      },
    },
  });
  if (deed === 'add:lines' || deed === 'add-lot') [...document.querySelectorAll('.lines .use input')].pop()?.focus();
  dispatchEvent(new Event('stillroom:laid'));
  speak();
}

document.addEventListener('input', event => {
  if (!event.target.closest('#compose')) return;
  typed++;
  keep();
  work();
});

// A press changes the form in place; saving and going back leave the page.
document.addEventListener('submit', event => {
  const deed = event.submitter?.name === 'do' ? event.submitter.value : 'work';
  if (event.target !== form() || ['save', 'discard'].includes(deed)) return;
  event.preventDefault();
  pressed.push(deed);
  work();
}, true);

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

/** Returns whether something is here that the studio never got: kept after a crash, or typed before this script had come. */
function putBack() {
  const kept = JSON.parse(localStorage.getItem(place) ?? '[]');
  localStorage.removeItem(place);
  let changed = [...form().elements].some(field => isText(field) && 'defaultValue' in field && field.type !== 'hidden' && field.value !== field.defaultValue);
  const fields = new Map(kept);
  if (fields.get('based-on') !== form().elements.namedItem('based-on').value) return changed;
  for (const [name, value] of fields) {
    const field = form().elements.namedItem(name);
    if (isText(field) && field.type !== 'hidden' && field.value !== value) {
      field.value = value;
      changed = true;
    }
  }
  return changed;
}

if (live) {
  if (putBack()) {
    typed++;
    keep();
    work();
  }
  // A page that comes back from the browser's memory may be of before a save.
  addEventListener('pageshow', event => { if (event.persisted) location.reload(); });
}
