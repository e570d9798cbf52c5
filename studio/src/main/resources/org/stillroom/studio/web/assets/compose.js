// Compose as one types: the form is sent, and what comes back is laid into the page without touching the field at hand.
const Idiomorph = window.Idiomorph;
if (Idiomorph) {
  Idiomorph.defaults.ignoreActiveValue = true;
  // What a reader has opened or closed stays so.
  Idiomorph.defaults.callbacks.beforeAttributeUpdated = (name, node) => !(name === 'open' && node.tagName === 'DETAILS');
}

// What is typed is also kept here until the server has it.
const form = document.getElementById('compose');
const place = form && 'stillroom:' + form.getAttribute('action');

document.addEventListener('input', event => {
  const typed = event.target.closest && event.target.closest('#compose');
  if (typed) localStorage.setItem(place, JSON.stringify([...new FormData(typed)].filter(([, value]) => typeof value === 'string')));
});
document.addEventListener('htmx:afterRequest', event => {
  if (event.detail.successful && event.detail.elt && event.detail.elt.id === 'compose') localStorage.removeItem(place);
});

// Something is here that the server never got, as after a crash: it goes back into the fields and is sent.
const kept = place && localStorage.getItem(place);
if (kept) {
  let changed = false;
  for (const [name, value] of JSON.parse(kept)) {
    const field = form.elements.namedItem(name);
    if (field && field.value !== undefined && !['token', 'request', 'based-on'].includes(name) && field.value !== value) {
      field.value = value;
      changed = true;
    }
  }
  localStorage.removeItem(place);
  if (changed) form.dispatchEvent(new Event('stillroom:again', { bubbles: true }));
}
