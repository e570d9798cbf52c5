// Make: taps are sent one after the other, kept while the studio is away, and never counted twice.
import { later, send } from './studio.js';
import { Idiomorph } from './vendor/idiomorph.esm.js';

const make = document.getElementById('make');
const key = `make:${make.dataset.make}:`;
const read = name => JSON.parse(localStorage.getItem(key + name) || 'null');
const keep = (name, value) => value === null
  ? localStorage.removeItem(key + name) : localStorage.setItem(key + name, JSON.stringify(value));
let sending = false;

// ---- What was tapped waits in a queue that survives a reload; each entry keeps its request id.
const queue = () => read('queue') || [];

function put(form, submitter) {
  const data = new FormData(form);
  if (submitter && submitter.name) data.set(submitter.name, submitter.value);
  const fields = [...data].filter(([name]) => name !== 'token');
  keep('queue', [...queue(), { path: new URL(form.action).pathname, fields }]);
  drain();
}

async function drain(isAgain = false) {
  if (sending) return;
  sending = true;
  try {
    while (queue().length) await sendFirst();
  } catch (away) {
    marks();
    if (isAgain) throw away;
    later(make, () => drain(true));
  } finally {
    sending = false;
  }
}

async function sendFirst() {
  const first = queue()[0];
  const body = new URLSearchParams(first.fields);
  const answer = await send(first.path, body, body.get('request'));
  if (answer.status >= 500) throw new Error('the studio has failed');
  const text = await answer.text();
  keep('queue', queue().slice(1));
  const part = answer.status < 300 || answer.status === 422;
  if (part && text.includes('id="bench"')) show(text, answer.status < 300);
  else location.reload();
}

function show(text, moveOn) {
  const before = document.getElementById('h-now')?.textContent;
  Idiomorph.morph(document.getElementById('bench'), text, { morphStyle: 'outerHTML', ignoreActiveValue: !moveOn });
  if (moveOn) document.querySelectorAll('.now input.write:not([name=minutes])').forEach(field => { field.value = ''; });
  marks();
  drops();
  tick();
  const heading = document.getElementById('h-now');
  if (moveOn && heading && heading.textContent !== before) {
    heading.focus({ preventScroll: true });
    if (document.getElementById('now').getBoundingClientRect().top < 0) document.getElementById('now').scrollIntoView();
  }
  document.getElementById('said')?.scrollIntoView({ block: 'nearest' });
}

// A step whose entry still waits says so.
function marks() {
  const waiting = new Set(queue().map(entry => new Map(entry.fields).get('step')));
  document.querySelectorAll('.steps > li').forEach(row => {
    const waits = waiting.has(row.dataset.step);
    row.classList.toggle('waits', waits);
    row.querySelector('.do').toggleAttribute('data-waits', waits);
    if (waits) row.querySelector('.do').dataset.waits = make.dataset.waiting;
  });
}

document.addEventListener('submit', event => {
  if (!event.target.matches('form.log')) return;
  event.preventDefault();
  wakeSound();
  put(event.target, event.submitter);
}, true);

// ---- Drops: counted here, sent as a number when they are in.
const stepHere = () => document.querySelector('.drops');

function drops() {
  const box = stepHere();
  if (!box) return;
  box.hidden = false;
  document.querySelector('.untapped')?.setAttribute('hidden', '');
  document.querySelector('.arm .plainly')?.setAttribute('hidden', '');
  for (const part of document.querySelectorAll('.arm .counted, .arm .counting')) part.hidden = false;
  const asked = Number(box.dataset.asked);
  const counted = read('drops:' + box.dataset.step) || 0;
  document.querySelector('.arm .counted').textContent = counted;
  const tally = box.querySelector('.tally');
  tally.replaceChildren(...(asked > 60 ? [] : Array.from({ length: asked }, (_, i) => {
    const drop = document.createElement('i');
    if (i < counted) drop.className = 'in';
    return drop;
  })));
  const next = box.querySelector('.next');
  const left = asked - counted;
  next.disabled = counted === 0;
  next.textContent = left > 0 ? make.dataset.togo.replace('{0}', left)
    : left === 0 ? make.dataset.dropsdone : make.dataset.dropsover.replace('{0}', -left);
  next.classList.toggle('quiet', left > 0);
  box.querySelector('.tap').classList.toggle('quiet', left <= 0);
  box.querySelector('.less').disabled = counted === 0;
  box.querySelector('[name=typed]').value = counted === asked ? '' : `${counted} drops`;
}

document.addEventListener('click', event => {
  const box = stepHere();
  if (!box) return;
  const name = 'drops:' + box.dataset.step;
  if (event.target.closest('.tap')) {
    wakeSound();
    keep(name, (read(name) || 0) + 1);
    drops();
  } else if (event.target.closest('.less')) {
    keep(name, Math.max(0, (read(name) || 0) - 1));
    drops();
  } else if (event.target.closest('.next')) {
    setTimeout(() => keep(name, null), 0);
  }
});

// ---- Timers: the log knows when one began; this counts down and rings until it is switched off.
let sound = null;
function wakeSound() {
  sound ??= 'AudioContext' in window ? new AudioContext() : null;
  if (sound?.state === 'suspended') sound.resume();
}

function ring() {
  if (!sound || sound.state !== 'running') return;
  for (const [wait, pitch] of [[0, 880], [0.25, 660]]) {
    const tone = sound.createOscillator();
    const loudness = sound.createGain();
    tone.frequency.value = pitch;
    loudness.gain.setValueAtTime(0.2, sound.currentTime + wait);
    loudness.gain.exponentialRampToValueAtTime(0.001, sound.currentTime + wait + 0.22);
    tone.connect(loudness).connect(sound.destination);
    tone.start(sound.currentTime + wait);
    tone.stop(sound.currentTime + wait + 0.22);
  }
}

const clockAhead = Number(document.getElementById('bench').dataset.now) - Date.now(); // of the studio, ms

function tick() {
  for (const timer of document.querySelectorAll('.timer')) {
    const left = Math.ceil((Number(timer.dataset.ends) - Date.now() - clockAhead) / 1000);
    const shown = timer.querySelector('time');
    const text = left > 0 ? clock(left) : make.dataset.over;
    if (shown.textContent !== text) shown.textContent = text;
    shown.setAttribute('role', left > 0 ? 'timer' : 'alert');
    timer.classList.toggle('over', left <= 0);
    if (left <= 0 && left % 3 === 0) ring();
  }
}

function clock(seconds) {
  const two = number => String(number).padStart(2, '0');
  const hours = Math.floor(seconds / 3600);
  const rest = `${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`;
  return hours > 0 ? `${hours}:${rest}` : rest;
}

// ---- Others may log the same make: what they did is shown here too.
async function lookAround() {
  const busy = document.activeElement?.matches('input.write') && document.activeElement.value !== '';
  if (document.visibilityState !== 'visible' || queue().length || sending || busy) return;
  try {
    const seen = await (await fetch(`/make/${make.dataset.make}/seen`, { cache: 'no-store' })).text();
    if (Number(seen) > Number(document.getElementById('bench').dataset.seen)) {
      const part = await fetch(location.pathname, { headers: { 'Stillroom-Part': 'true' } });
      if (part.ok && !queue().length) show(await part.text(), true);
    }
  } catch {
    // Away: the next tap will say so, and nothing is lost by not looking.
  }
}

marks();
drops();
tick();
setInterval(tick, 1000);
setInterval(lookAround, 4000);
drain();
