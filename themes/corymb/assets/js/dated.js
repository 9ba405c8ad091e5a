// Of every recipe's answers, which are all in the page, shows the one for a week: what can be made first,
// in the order of ways; then, folded, what can't.
import { CELLS, cellOf, daysOn, written } from "./week.js";
import { _ } from "./words.js";

const NONE = "none";

// The nearest days, whole weeks before a day and after it, on which a recipe can be made: none before `earliest`.
function eitherSide(day, earliest, places, answers) {
  const can = (other) => answers[places[cellOf(other)]].dataset.answer !== NONE;
  const found = [-7, 7].map((step) => {
    for (let weeks = 1; weeks <= 2 * CELLS; weeks += 1) {
      const other = daysOn(day, step * weeks);
      if (other >= earliest && can(other)) return { weeks, day: other };
      if (other < earliest && step < 0) return null;
    }
    return null;
  });
  // Of two alike the one to come goes first.
  return found.reverse().filter(Boolean).sort((one, other) => one.weeks - other.weeks);
}

// Whether the nearest day of all has gone by, so that what it lacks is nobody's question.
function hasGone(day, earliest, places, answers) {
  const [first] = eitherSide(day, new Date(0), places, answers);
  return first !== undefined && first.day < earliest;
}

// A day to choose instead: of two the second begins with ‘or’.
function offered(place, count, day) {
  if (place) return _("or {day}", { day });
  return count > 1 ? _("The nearest is {day}", { day }) : _("The next is {day}", { day });
}

function point(buttons, sides, inWords) {
  buttons.forEach((button, place) => {
    const side = sides[place];
    button.hidden = !side;
    if (!side) return;
    button.dataset.nearest = written(side.day);
    button.textContent = offered(place, sides.length, inWords(side.day));
  });
}

// Shows a recipe's answer for the week of a day, and gives its state.
function answer(recipe, day, { inWords, earliest }) {
  const places = recipe.dataset.weeks.split(" ");
  const cell = cellOf(day);
  const answers = [...recipe.querySelectorAll("[data-answer]")];
  const gone = hasGone(day, earliest, places, answers);
  const chosen = (gone ? recipe.dataset.next.split(" ") : places)[cell];
  answers.forEach((each, place) => { each.hidden = String(place) !== chosen; });
  for (const image of recipe.querySelectorAll("[data-goes-with]")) {
    image.hidden = !image.dataset.goesWith.split(" ").includes(chosen);
  }
  const shown = answers[chosen];
  const sure = shown.querySelector("[data-sure-here]");
  if (sure) sure.textContent = recipe.dataset.sure.split("|")[cell];
  const nearest = [...shown.querySelectorAll("[data-nearest]")];
  if (nearest.length) point(nearest, eitherSide(day, earliest, places, answers), inWords);
  return shown.dataset.answer;
}

function answerStyle({ section, recipes }, day, asked) {
  const can = section.querySelector("[data-date-can]");
  const folded = section.querySelector("[data-date-not]");
  const not = folded.querySelector("ul");
  const states = recipes.map((recipe) => answer(recipe, day, asked));
  for (const way of asked.ways) {
    const those = recipes.filter((recipe, place) => states[place] === way);
    (way === NONE ? not : can).append(...those);
  }
  can.hidden = !can.children.length;
  folded.hidden = !not.children.length;
  folded.open = can.hidden;
  folded.querySelector("[data-date-not-count]").textContent = String(not.children.length);
  return states;
}

// How to answer for a day; it gives the state of every recipe. `words` are those of the states, in the order of
// ways; `inWords` says another day, and none is offered before `earliest`.
export function answering(page, words, inWords, earliest) {
  const asked = { ways: Object.keys(words), inWords, earliest };
  const styles = [...page.querySelectorAll("[data-date-style]")].map((section) => {
    return { section, recipes: [...section.querySelectorAll("[data-weeks]")] };
  });
  return (day) => styles.flatMap((style) => answerStyle(style, day, asked));
}

// How many can be made, and how.
export function inAll(states, words) {
  const ways = Object.entries(words)
    .map(([way, said]) => [way === NONE ? 0 : states.filter((state) => state === way).length, said])
    .filter(([count]) => count);
  const all = states.length;
  if (!ways.length) return _("None of the {all} arrangements can be made then.", { all });
  const sum = ways.reduce((before, [count]) => before + count, 0);
  // L10N: {how} is one of 'as pictured', 'with a variant', 'with swaps'; {ways} is '3 as pictured, 2 with swaps'.
  if (ways.length === 1) return _("{sum} of {all} arrangements can be made, {how}.", { sum, all, how: ways[0][1] });
  const each = ways.map(([number, how]) => _("{number} {how}", { number, how })).join(", ");
  return _("{sum} of {all} arrangements can be made: {ways}.", { sum, all, ways: each });
}
