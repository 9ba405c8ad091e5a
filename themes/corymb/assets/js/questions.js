// Ten questions at a time. A choice that is clicked is the answer: it is said whether it is right, and the reasons
// are unfolded. When all are answered the score goes into the record.
import { isAbout, tenOf } from "./chosen.js";
import { keepAnswers, todayWritten } from "./practised.js";
import { _, plural } from "./words.js";

const page = document.querySelector("[data-questions]");
const part = (name) => page.querySelector(`[data-${name}]`);
const of = page.querySelector("#of");
const every = [...page.querySelectorAll("[data-question]")];
const shown = part("round");
let round = 0;
let right = 0;
let left = 0;

const things = every.map((question) => {
  const { question: id, kind, style, recipe } = question.dataset;
  return { id, kind, style, recipe, question };
});
const styleOf = (recipe) => things.find((thing) => thing.recipe === recipe)?.style;

function say() {
  const all = shown.children.length;
  part("end").hidden = left > 0 || !all;
  if (!all) {
    part("count").textContent = _("There is nothing to ask about it yet.");
    return;
  }
  part("count").textContent = left
    ? plural("{left} of {all} to answer.", "{left} of {all} to answer.", left, { left, all })
    : _("{right} of {all} right. It is in your record.", { right, all });
}

function finish() {
  const about = of.selectedOptions[0].textContent;
  keepAnswers({ about: of.value ? about : "", right, all: shown.children.length });
  part("again").focus();
}

function answer(question, buttons, chosen) {
  const wanted = Number(question.dataset.right);
  buttons.forEach((button, place) => {
    button.disabled = true;
    const mark = document.createElement("span");
    mark.textContent = place === wanted ? _("right") : place === chosen ? _("not this one") : "";
    if (mark.textContent) button.append(" ", mark);
    if (place === wanted) button.dataset.isRight = "";
  });
  const folded = question.querySelector("details");
  folded.hidden = false;
  folded.open = true;
  right += Number(chosen === wanted);
  left -= 1;
  say();
  if (left) folded.querySelector("summary").focus();
  else finish();
}

function asking(original) {
  const question = original.cloneNode(true);
  question.querySelector("details").hidden = true;
  const buttons = [...question.querySelectorAll(".question-choices li")].map((choice) => {
    const button = document.createElement("button");
    button.type = "button";
    button.className = "choice-button";
    button.textContent = choice.textContent;
    choice.replaceChildren(button);
    return button;
  });
  buttons.forEach((button, place) => {
    button.addEventListener("click", () => answer(question, buttons, place));
  });
  return question;
}

function ask() {
  const wanted = things.filter((thing) => isAbout(thing, of.value, styleOf));
  const ten = tenOf(wanted, todayWritten(), round);
  shown.replaceChildren(...ten.map(({ question }) => asking(question)));
  [right, left] = [0, ten.length];
  say();
}

function readAddress() {
  const [[what, which] = []] = [...new URLSearchParams(location.search)];
  const wanted = `${what}=${which}`;
  if ([...of.options].some((option) => option.value === wanted)) of.value = wanted;
}

of.addEventListener("change", () => {
  history.replaceState(history.state, "", location.pathname + (of.value && `?${of.value}`));
  round = 0;
  ask();
});
part("again").addEventListener("click", () => {
  round += 1;
  ask();
  shown.querySelector("button").focus();
});
part("ask").addEventListener("submit", (event) => event.preventDefault());
readAddress();
part("all").remove();
part("ask").hidden = false;
shown.hidden = false;
ask();
