// Of every recipe's answers, which are all in the page, shows the one for a week: what can be made first,
// in the order of ways; then, folded, what can't.
import { CELLS, cellOf, daysOn, written } from "./week.js";

const WAYS = { pictured: "as pictured", variant: "as a variant", swaps: "with swaps" };
const ORDER = [...Object.keys(WAYS), "none"];

// The nearest day, whole weeks away, on which a recipe can be made; of two alike the one to come.
function nearestDay(day, places, answers) {
  for (let weeks = 1; weeks <= CELLS; weeks += 1) {
    const near = [weeks, -weeks].map((each) => daysOn(day, 7 * each));
    const found = near.find((other) => answers[places[cellOf(other)]].dataset.answer !== "none");
    if (found) return found;
  }
  return null;
}

function point(button, day, inWords) {
  button.hidden = !day;
  if (!day) return;
  button.dataset.nearest = written(day);
  button.textContent = `The nearest is ${inWords(day)}`;
}

// Shows a recipe's answer for the week of a day, and gives its state.
function answer(recipe, day, inWords) {
  const places = recipe.dataset.weeks.split(" ");
  const cell = cellOf(day);
  const chosen = places[cell];
  const answers = [...recipe.querySelectorAll("[data-answer]")];
  answers.forEach((each, place) => { each.hidden = String(place) !== chosen; });
  for (const image of recipe.querySelectorAll("[data-goes-with]")) {
    image.hidden = !image.dataset.goesWith.split(" ").includes(chosen);
  }
  const shown = answers[chosen];
  const sure = shown.querySelector("[data-sure-here]");
  if (sure) sure.textContent = recipe.dataset.sure.split("|")[cell];
  const nearest = shown.querySelector("[data-nearest]");
  if (nearest) point(nearest, nearestDay(day, places, answers), inWords);
  return shown.dataset.answer;
}

function answerStyle({ section, recipes }, day, inWords) {
  const can = section.querySelector("[data-date-can]");
  const folded = section.querySelector("[data-date-not]");
  const not = folded.querySelector("ul");
  const states = recipes.map((recipe) => answer(recipe, day, inWords));
  for (const way of ORDER) {
    const those = recipes.filter((_, place) => states[place] === way);
    (way === "none" ? not : can).append(...those);
  }
  can.hidden = !can.children.length;
  folded.hidden = !not.children.length;
  folded.open = can.hidden;
  folded.querySelector("[data-date-not-count]").textContent = String(not.children.length);
  return states;
}

// How to answer for a day; it gives the state of every recipe. `inWords` says another day.
export function answering(page, inWords) {
  const styles = [...page.querySelectorAll("[data-date-style]")].map((section) => {
    return { section, recipes: [...section.querySelectorAll("[data-weeks]")] };
  });
  return (day) => styles.flatMap((style) => answerStyle(style, day, inWords));
}

// How many can be made, and how.
export function inAll(states) {
  const ways = Object.entries(WAYS)
    .map(([way, words]) => [states.filter((state) => state === way).length, words])
    .filter(([count]) => count);
  if (!ways.length) return `None of the ${states.length} arrangements can be made then.`;
  const sum = ways.reduce((all, [count]) => all + count, 0);
  if (ways.length === 1) return `${sum} of ${states.length} arrangements can be made, ${ways[0][1]}.`;
  const each = ways.map(([count, words]) => `${count} ${words}`).join(", ");
  return `${sum} of ${states.length} arrangements can be made: ${each}.`;
}
