// Of every recipe's answers, which are all in the page, shows the one for a week: what can be made first,
// in the order of ways; then, folded, what can't.
const WAYS = { pictured: "as pictured", variant: "as a variant", swaps: "with swaps" };
const ORDER = [...Object.keys(WAYS), "none"];

// Shows a recipe's answer for a cell of the year, and gives its state.
function answer(recipe, cell) {
  const chosen = recipe.dataset.weeks.split(" ")[cell];
  const answers = [...recipe.querySelectorAll("[data-answer]")];
  answers.forEach((each, place) => { each.hidden = String(place) !== chosen; });
  for (const image of recipe.querySelectorAll("[data-goes-with]")) {
    image.hidden = !image.dataset.goesWith.split(" ").includes(chosen);
  }
  const shown = answers[chosen];
  const sure = shown.querySelector("[data-sure-here]");
  if (sure) sure.textContent = recipe.dataset.sure.split("|")[cell];
  return shown.dataset.answer;
}

function answerStyle({ section, recipes }, cell) {
  const can = section.querySelector("[data-date-can]");
  const folded = section.querySelector("[data-date-not]");
  const not = folded.querySelector("ul");
  const states = recipes.map((recipe) => answer(recipe, cell));
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

// The styles of a page with their recipes in the order they were written, and how to answer for a cell
// of the year: it gives the state of every recipe.
export function answering(page) {
  const styles = [...page.querySelectorAll("[data-date-style]")].map((section) => {
    return { section, recipes: [...section.querySelectorAll("[data-weeks]")] };
  });
  return (cell) => styles.flatMap((style) => answerStyle(style, cell));
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
