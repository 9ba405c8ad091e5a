// Search by the beginnings of words, accents aside, over the list of all pages (search.json).
// Where nothing is found so, a word of five letters or more may hold one slip.
import { _, plural } from "./words.js";

const MOST = 60; // found pages that are listed: more than anyone reads before typing another letter
const LONG = 5; // letters; a shorter word with a slip is too often another word

export function fold(text) {
  return text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
}

export function wordsOf(text) {
  return fold(text).match(/[\p{L}\p{N}]+/gu) ?? [];
}

// One letter missing, too many, wrong or in the wrong place: "daliah" for "dahlia".
export function isSlip(typed, right) {
  let from = 0;
  while (from < typed.length && typed[from] === right[from]) from += 1;
  let same = 0;
  const shorter = Math.min(typed.length, right.length) - from;
  while (same < shorter && typed.at(-1 - same) === right.at(-1 - same)) same += 1;
  const [a, b] = [typed, right].map((word) => word.slice(from, word.length - same));
  if (Math.max(a.length, b.length) <= 1) return true;
  return a.slice(1) + a[0] === b || b.slice(1) + b[0] === a;
}

export function begins(own, asked) {
  return own.startsWith(asked);
}

export function nearlyBegins(own, asked) {
  if (begins(own, asked)) return true;
  return asked.length >= LONG && [-1, 0, 1].some((more) => isSlip(asked, own.slice(0, asked.length + more)));
}

// A word in the name counts for more than one in the text; every word asked for must begin some word.
export function score(page, asked, matches = begins) {
  let sum = 0;
  for (const word of asked) {
    if (page.titleWords.includes(word)) sum += 6;
    else if (page.titleWords.some((own) => matches(own, word))) sum += 4;
    else if (page.textWords.some((own) => matches(own, word))) sum += 1;
    else return 0;
  }
  return sum;
}

function ranked(pages, asked, matches) {
  return pages
    .map((page) => ({ page, points: score(page, asked, matches) }))
    .filter(({ points }) => points > 0)
    .sort((a, b) => b.points - a.points || a.page.title.localeCompare(b.page.title))
    .map(({ page }) => page);
}

export function find(pages, query) {
  const asked = wordsOf(query);
  if (!asked.length) return [];
  const found = ranked(pages, asked, begins);
  return found.length ? found : ranked(pages, asked, nearlyBegins);
}

export function prepare(page) {
  return { ...page, titleWords: wordsOf(page.title), textWords: wordsOf(`${page.kind} ${page.about} ${page.text}`) };
}

function entry(page, root) {
  const [item, link, kind, text] = ["li", "a", "p", "p"].map((name) => document.createElement(name));
  link.href = new URL(page.href, root);
  link.textContent = page.title;
  kind.textContent = page.kind;
  kind.className = "label";
  text.textContent = page.about;
  item.append(link, kind, text);
  return item;
}

function howMany(number) {
  return number ? plural("{number} found.", "{number} found.", number, { number }) : _("Nothing found.");
}

async function start(form) {
  const input = form.querySelector("input");
  const list = document.querySelector("[data-search-found]");
  const count = document.querySelector("[data-search-count]");
  const root = new URL(form.dataset.index, location.href);
  const show = (pages) => {
    const found = find(pages, input.value);
    list.replaceChildren(...found.slice(0, MOST).map((page) => entry(page, root)));
    const query = input.value.trim();
    count.textContent = query ? howMany(found.length) : "";
    const address = query ? `?q=${encodeURIComponent(query)}` : location.pathname;
    history.replaceState(history.state, "", address);
  };
  input.value = new URLSearchParams(location.search).get("q") ?? "";
  try {
    const pages = (await (await fetch(root)).json()).map(prepare);
    show(pages);
    document.querySelector("[data-search-instead]").hidden = true;
    input.addEventListener("input", () => show(pages));
    form.addEventListener("submit", (event) => event.preventDefault());
  } catch {
    count.textContent = _("The list of pages could not be fetched; searching takes a connection.");
  }
}

if (typeof document !== "undefined") {
  const form = document.querySelector("[data-search]");
  if (form) start(form);
}
