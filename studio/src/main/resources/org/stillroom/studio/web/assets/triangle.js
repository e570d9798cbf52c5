// The mixing triangle under a hand. The arithmetic is the core's own, compiled for browsers (core.js); nothing is computed here.
//
// What a page gives it (compose/triangle.jte writes the first two):
//   #triangle      data-numbers: the recipe in bare numbers (JSON); data-shown: the part that is drawn; data-decimal: "." or ","
//   [data-said]    places for words, anywhere: "strength", "sugar", "ethanol", "sweet", "water", "volume"; a number alone, written
//                  with data-places decimals; where oils are in it, "oil" and "clear-from" too
//   #haze          where oils are in it: data-clear, data-hazy and data-cloudy are the words for a verdict
//   [data-target]  fields: data-target="strength" (% vol) or "sugar" (g/L). When the point is let go, the target is written into
//                  them as a person would type it, then told by the events "input" and "change", so that the page asks the server
//   [data-step]    buttons: data-step="strength" or "sugar", data-by="-0.5": the same without a drag
//   [data-line]    cells with a number alone: data-line=INDEX of the recipe's line or "total", data-unit="g", "oz" (by weight),
//                  "ml" or "floz" (US); they keep the decimals that they have, and cells without a digit (solids have no volume)
//                  are left alone
//   [data-dose]    places with a number alone, a dose per litre: data-dose=INDEX of the line, data-grams of one of its units
//   #compose       where it is there, it has the class "is-moving" from the first move until the server's answer is laid in: what
//                  the instruments show waits for that
// While a hand holds the point, #triangle has the class "held-by-hand"; whoever swaps the page's parts leaves them alone then.
import { fixed, fluidOunces, moveTo, moveUnder, ounces, perLitre, shade } from "./core.js";

const UNITS = { strength: "\u00a0%", sugar: "\u00a0g/L" };
const PLACES = { strength: 2, sugar: 1 }; // as many as reach may need; what is not needed is left out
const KEYS = {
  ArrowUp: ["strength", 0.5], ArrowDown: ["strength", -0.5], ArrowRight: ["sugar", 5], ArrowLeft: ["sugar", -5],
  PageUp: ["strength", 5], PageDown: ["strength", -5],
};
const FINE = 0.2; // of a step, with Shift
const QUIET = 500; // ms without a move before it is spoken and written

const plate = () => document.getElementById("triangle");
const point = () => document.getElementById("point");

// What is spoken stands outside the parts that the server sends anew: they would wipe it off before it is heard.
const voice = document.createElement("p");
voice.id = "said";
voice.className = "off-screen";
voice.setAttribute("role", "status");
(document.querySelector("main") ?? document.body).append(voice);

let numbers = { text: "", recipe: null };
let last = null; // the latest move, until the server draws the triangle anew
let typed = {}; // what stood in the fields before the first move
let unsettled = false; // whether the page has yet to be told of the latest move
let later = 0;
let shading = false; // whether the next picture is to be shaded

function recipe() {
  const text = plate().dataset.numbers;
  if (numbers.text !== text) {
    numbers = { text, recipe: JSON.parse(text) };
    last = null;
    typed = {};
  }
  return numbers.recipe;
}

const shown = () => Number(plate().dataset.shown);
const written = (value, places) => fixed(value, places).replace(".", plate().dataset.decimal);

/** Where the point stands: the latest move, else what the server drew. */
function here() {
  const now = recipe();
  return last ?? moveTo(now, shown(), Number(point().dataset.strength), Number(point().dataset.sugar));
}

/** The core's answer for another strength or sugar, from where the point stands. */
function shifted(what, by) {
  const from = here();
  const target = { strength: from.askedStrength, sugar: from.askedSugar };
  target[what] += by;
  return moveTo(recipe(), shown(), target.strength, target.sugar);
}

/** The place on the drawing that lies under a finger or the mouse. */
function under(event) {
  const toDrawing = document.getElementById("tri").getScreenCTM().inverse();
  return new DOMPoint(event.clientX, event.clientY).matrixTransform(toDrawing);
}

function show(moved) {
  if (!moved) return; // the arithmetic did not settle: the point stays where it is
  last = moved;
  unsettled = true;
  draw(moved);
  say(moved);
  pour(moved);
  dose(moved);
  document.getElementById("compose")?.classList.add("is-moving");
  fill(moved);
  shadeSoon();
}

function draw(moved) {
  const handle = point();
  handle.setAttribute("transform", `translate(${moved.place})`);
  handle.setAttribute("aria-valuenow", fixed(moved.strength, 1));
  handle.setAttribute("aria-valuetext", spoken(moved));
  document.getElementById("sight-strength").setAttribute("d", moved.sightOfStrength);
  document.getElementById("sight-sugar").setAttribute("d", moved.sightOfSugar);
  tag("tag-strength", moved.tagOfStrength, written(moved.strength, 1));
  tag("tag-sugar", moved.tagOfSugar, written(moved.sugar, 0));
  for (const tick of document.querySelectorAll("#tri .tick")) {
    const distance = Math.abs(Number(tick.dataset.at) - moved[tick.dataset.axis]);
    tick.classList.toggle("covered", distance < Number(tick.dataset.near));
  }
  document.getElementById("at-the-border").hidden = !moved.held;
}

function tag(id, place, text) {
  const node = document.getElementById(id);
  node.setAttribute("transform", `translate(${place})`);
  node.querySelector("text").textContent = text;
}

function spoken(moved) {
  const held = moved.held ? `. ${document.getElementById("at-the-border").textContent}` : "";
  return `${written(moved.strength, 1)}\u00a0%\u00a0vol, ${written(moved.sugar, 0)}\u00a0g/L${held}`;
}

function say(moved) {
  const said = {
    strength: moved.strength, sugar: moved.sugar, volume: moved.millilitres,
    ethanol: 100 * moved.ethanolShare, sweet: 100 * moved.sugarShare, water: 100 * moved.waterShare,
  };
  write(said);
}

function write(said) {
  for (const node of document.querySelectorAll("[data-said]")) {
    const value = said[node.dataset.said];
    if (value !== undefined) node.textContent = written(value, Number(node.dataset.places));
  }
}

/** Shades the triangle for the oils of the latest move, at most once for each picture that the screen shows. */
function shadeSoon() {
  if (shading || !document.getElementById("haze")) return;
  shading = true;
  requestAnimationFrame(() => {
    shading = false;
    if (last && document.getElementById("haze")) tint(shade(recipe(), shown(), last.grams));
  });
}

function tint(shaded) {
  document.getElementById("area-hazy").setAttribute("d", shaded?.hazy ?? "");
  document.getElementById("area-cloudy").setAttribute("d", shaded?.cloudy ?? "");
  const verdict = shaded?.verdict ?? "clear";
  const words = document.getElementById("haze");
  words.querySelector("[data-verdict]").textContent = words.dataset[verdict];
  const told = verdict !== "clear" && !Number.isNaN(shaded.clearFrom);
  document.getElementById("clear-from").hidden = !told;
  write(told ? { oil: shaded.oil, "clear-from": shaded.clearFrom } : { oil: shaded?.oil ?? 0 });
}

/** Writes the amounts into the cells of the table. */
function pour(moved) {
  for (const cell of document.querySelectorAll("[data-line][data-unit]")) {
    const before = cell.textContent;
    if (/\d/.test(before)) cell.textContent = written(amount(moved, cell.dataset), decimals(before));
  }
}

/** Writes what each line doses per litre of what comes of it. */
function dose(moved) {
  for (const place of document.querySelectorAll("[data-dose]")) {
    const told = perLitre(moved.grams[place.dataset.dose], moved.millilitres, Number(place.dataset.grams));
    place.textContent = told.replace(".", plate().dataset.decimal);
  }
}

function amount(moved, { line, unit }) {
  const grams = line === "total" ? moved.mass : moved.grams[line];
  const millilitres = line === "total" ? moved.millilitres : moved.volumes[line];
  switch (unit) {
    case "ml": return millilitres;
    case "floz": return fluidOunces(millilitres);
    case "oz": return ounces(grams);
    default: return grams;
  }
}

const decimals = text => (/[.,](\d+)\s*$/.exec(text)?.[1] ?? "").length;

/** Writes the target as a person would type it; what was typed comes back where it asks for the same. */
function fill(moved) {
  const asked = { strength: moved.askedStrength, sugar: moved.askedSugar };
  for (const field of fields()) {
    const what = field.dataset.target;
    const before = recipe().asked[what];
    typed[what] ??= field.value;
    const asBefore = before && before.low === asked[what] && before.high === asked[what];
    field.value = asBefore ? typed[what] : written(asked[what], PLACES[what]).replace(/[.,]?0+$/, "") + UNITS[what];
  }
}

const fields = () => document.querySelectorAll("input[data-target=strength], input[data-target=sugar]");

/** Speaks, and tells the page that the target is another. */
function settle() {
  clearTimeout(later);
  if (!unsettled) return;
  unsettled = false;
  const verdict = document.querySelector("#haze [data-verdict]");
  if (document.activeElement !== point()) voice.textContent = spoken(last) + (verdict ? `. ${verdict.textContent}` : "");
  for (const kind of ["input", "change"]) {
    for (const field of fields()) field.dispatchEvent(new Event(kind, { bubbles: true }));
  }
}

function settleLater() {
  clearTimeout(later);
  later = setTimeout(settle, QUIET);
}

const isHeld = () => plate()?.classList.contains("held-by-hand");

document.addEventListener("pointerdown", event => {
  const handle = event.target.closest?.("#point");
  if (!handle || event.button > 0) return;
  event.preventDefault();
  handle.setPointerCapture(event.pointerId);
  handle.focus({ preventScroll: true });
  plate().classList.add("held-by-hand");
});

document.addEventListener("pointermove", event => {
  if (!isHeld() || !point().hasPointerCapture(event.pointerId)) return;
  const { x, y } = under(event);
  show(moveUnder(recipe(), shown(), x, y, here().liquid));
});

for (const end of ["pointerup", "pointercancel"]) {
  document.addEventListener(end, () => {
    if (!isHeld()) return;
    plate().classList.remove("held-by-hand");
    settle();
  });
}

document.addEventListener("keydown", event => {
  const key = event.target.closest?.("#point") && KEYS[event.key];
  if (!key) return;
  event.preventDefault();
  show(shifted(key[0], key[1] * (event.shiftKey ? FINE : 1)));
  settleLater();
});

document.addEventListener("click", event => {
  const button = event.target.closest?.("button[data-step]");
  if (!button || !plate() || !point() || !(button.dataset.step in UNITS)) return;
  event.preventDefault();
  show(shifted(button.dataset.step, Number(button.dataset.by)));
  settleLater();
});

// The style "touch-action" is not heeded inside a drawing, so a finger on the point is kept from scrolling here. The listener sits on
// the drawing alone: the rest of the page scrolls without asking it.
const guarded = new WeakSet();
function guard() {
  const drawing = document.getElementById("tri");
  if (!drawing || guarded.has(drawing)) return;
  guarded.add(drawing);
  drawing.addEventListener("touchstart", event => {
    if (event.touches.length === 1 && event.target.closest("#point")) event.preventDefault();
  }, { passive: false });
}
guard();
addEventListener("stillroom:laid", guard);

// Parts that arrive while the point is held would pull it from under the hand; letting go asks for them anew.
addEventListener("stillroom:lay", event => {
  if (isHeld()) event.preventDefault();
});
