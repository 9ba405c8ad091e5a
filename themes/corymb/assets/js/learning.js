// On the path: lessons are ticked when they are learnt, and how often each recipe was made is read from the record.
import { keepLearnt, learnt, timesMade } from "./practised.js";
import { _, plural } from "./words.js";

const page = document.querySelector("[data-learning]");
const steps = [...page.querySelectorAll("[data-kind]")];
const [lessons, recipes] = ["lesson", "recipe"].map((kind) => steps.filter((step) => step.dataset.kind === kind));
const next = page.querySelector("[data-next]");

function isDone(step) {
  const { kind, id } = step.dataset;
  return kind === "lesson" ? id in learnt() : timesMade(id) > 0;
}

function inHours(minutes) {
  const hours = Math.round(minutes / 6) / 10;
  return new Intl.NumberFormat(document.documentElement.lang).format(hours);
}

function show() {
  const left = steps.filter((step) => !isDone(step));
  for (const step of steps) step.toggleAttribute("data-done", isDone(step));
  for (const step of recipes) {
    const times = timesMade(step.dataset.id);
    const said = step.querySelector("[data-made]");
    said.textContent = plural("Made once", "Made {times} times", times, { times });
    said.hidden = !times;
  }
  const soFar = page.querySelector("[data-so-far]");
  const minutes = left.reduce((sum, step) => sum + Number(step.dataset.minutes), 0);
  const values = { done: steps.length - left.length, all: steps.length, hours: inHours(minutes) };
  soFar.textContent = _("Done: {done} of {all}. About {hours} h are left.", values);
  soFar.hidden = left.length === steps.length;
  next.hidden = !left.length || left.length === steps.length;
  if (left.length) next.querySelector("a").href = `#${left[0].id}`;
}

for (const step of lessons) {
  const part = step.querySelector("[data-tick]");
  const box = part.querySelector("input");
  box.checked = isDone(step);
  box.addEventListener("change", () => {
    keepLearnt(step.dataset.id, step.dataset.title, box.checked);
    show();
  });
  part.hidden = false;
}
show();
