// Which ten questions come up? By the day, so that a second look the same day finds the same ones; `round` brings
// others. No kind of question comes more than twice while others are to be had.
const TEN = 10;
const TWICE = 2;

// A number that looks like chance and is always the same for a text (FNV-1a, mixed once more).
export function mixed(text) {
  let number = 0x811c9dc5;
  for (const letter of text) number = Math.imul(number ^ letter.codePointAt(0), 0x01000193);
  number = Math.imul(number ^ (number >>> 15), 0x85ebca6b);
  return (number ^ (number >>> 13)) >>> 0;
}

// Of things with an `id` and a `kind`.
export function tenOf(things, day, round) {
  const order = things
    .map((thing) => ({ thing, by: mixed(`${day} ${round} ${thing.id}`) }))
    .sort((one, other) => one.by - other.by)
    .map(({ thing }) => thing);
  const counts = {};
  const few = order.filter(({ kind }) => {
    counts[kind] = (counts[kind] ?? 0) + 1;
    return counts[kind] <= TWICE;
  });
  return [...new Set([...few, ...order])].slice(0, TEN);
}

// `style=posy`, `recipe=may-cup`, `lessons=` or nothing: what is of no recipe or no style goes with each of them.
export function isAbout({ style, recipe }, about, styleOf) {
  const [what, which] = about.split("=");
  if (what === "style") return style === which;
  if (what === "lessons") return style === "";
  if (what === "recipe") return recipe === which || (recipe === "" && style === styleOf(which));
  return true;
}
