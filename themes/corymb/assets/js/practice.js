// A look made step by step: one step is shown, and which stands in the address (#3). The clock begins with the
// first step. At the end the signs are ticked, and what was made goes into the record.
import { clockOf, inFigures } from "./clock.js";
import { lighting } from "./plan-lit.js";
import { keepMade, timesMade } from "./practised.js";
import { _, plural } from "./words.js";

const page = document.querySelector("[data-practice]");
const { practice: look, recipe, name } = page.dataset;
const part = (kind) => page.querySelector(`[data-${kind}]`);
const steps = [...page.querySelectorAll("[data-step]")];
const [bar, back, on, turn, form] = ["bar", "back", "on", "clock-turn", "done"].map(part);
const expectedOf = page.dataset.expected.split(" ").map(Number);
const clock = clockOf(look);
const minutes = form.elements.minutes;
const plan = page.querySelector(".practice-plan img");
const light = plan && lighting(plan);
let typed = false;

const expected = () => expectedOf[Math.min(timesMade(recipe), expectedOf.length - 1)];

function here() {
  const place = Number(location.hash.slice(1));
  return Number.isInteger(place) && place >= 0 && place < steps.length ? place : 0;
}

function lit(step) {
  const named = [...step.querySelectorAll("[data-stem]")].map((stem) => stem.dataset.stem);
  const all = step === steps[0];
  const lines = [...page.querySelectorAll("[data-key]")];
  for (const line of lines) line.toggleAttribute("data-named", !all && named.includes(line.dataset.key));
  light?.(lines.filter((line) => "named" in line.dataset).map((line) => line.dataset.number));
}

function tell() {
  part("clock").textContent = inFigures(clock.ran());
  turn.hidden = !clock.begun();
  turn.textContent = clock.goes() ? _("Pause") : _("Go on");
  if (!typed) minutes.value = clock.begun() ? clock.minutes() : "";
  compare();
}

function compare() {
  const took = Number(minutes.value);
  const times = timesMade(recipe) + 1;
  part("compared").textContent = plural(
    "About {expected} min are expected of your first, {minutes} of a practised hand.",
    "About {expected} min are expected of your piece number {times}, {minutes} of a practised hand.",
    times,
    { expected: expected(), minutes: page.dataset.minutes, times },
  );
  part("keep-words").textContent = took
    ? plural("Done: keep {took} minute", "Done: keep {took} minutes", took, { took })
    : _("Keep it in my record");
}

function show() {
  const place = here();
  steps.forEach((step, at) => { step.hidden = at !== place; });
  lit(steps[place]);
  back.disabled = place === 0;
  on.hidden = place === steps.length - 1;
  on.textContent = place === 0 ? _("Begin") : _("Next");
  if (place > 0 && place < steps.length - 1 && !clock.begun()) clock.start();
  const { says } = steps[place].dataset;
  const heading = steps[place].querySelector("h2").textContent;
  part("says-now").textContent = says ? `${heading}: ${says}` : heading;
  tell();
}

// Not by following a link, which would take the focus from the button.
function go(by) {
  history.pushState(null, "", `#${here() + by}`);
  show();
  scrollTo({ top: 0, behavior: "instant" });
}

function finish(event) {
  event.preventDefault();
  const signs = [...form.querySelectorAll("[name=sign]")];
  const took = Number(minutes.value);
  if (!took) return minutes.focus();
  const missed = signs.filter((sign) => !sign.checked).map((sign) => sign.value);
  const piece = { look, recipe, name, minutes: took, expected: expected(), missed };
  const could = keepMade({ ...piece, note: form.elements.note.value.trim() });
  part("in-record").textContent = could
    ? plural("Kept: {took} minute.", "Kept: {took} minutes.", took, { took })
    : _("This telephone keeps nothing for the site. Write it down on paper.");
  if (!could) return undefined;
  clock.clear();
  typed = false;
  form.reset();
  form.hidden = true;
  part("after").hidden = false;
  part("after").querySelector("a").focus();
  return tell();
}

back.addEventListener("click", () => go(-1));
on.addEventListener("click", () => go(1));
turn.addEventListener("click", () => {
  if (clock.goes()) clock.pause();
  else clock.start();
  tell();
});
minutes.addEventListener("input", () => {
  typed = minutes.value !== "";
  compare();
});
form.addEventListener("submit", finish);
addEventListener("popstate", show);
setInterval(tell, 1000);
part("keep").hidden = false;
bar.hidden = false;
page.dataset.stepped = "";
show();
