// Changes to another variant without leaving the page: fetches the variant's own page and puts its
// main part in place. Every variant has an address of its own, so history and sending stay true.
import { SHOWN } from "./page.js";

let asked = 0;

async function fetchPage(href) {
  const answer = await fetch(href);
  if (!answer.ok) throw new Error(`${answer.status} for ${href}`);
  return new DOMParser().parseFromString(await answer.text(), "text/html");
}

// What the head says of the page, so that sending and searching follow the variant.
function takeHead(page) {
  document.title = page.title;
  for (const [where, what] of [['link[rel="canonical"]', "href"], ['meta[name="description"]', "content"]]) {
    const [ours, theirs] = [document.head.querySelector(where), page.head.querySelector(where)];
    if (ours && theirs) ours.setAttribute(what, theirs.getAttribute(what));
  }
}

function put(page) {
  takeHead(page);
  const { tint } = page.body.dataset;
  if (tint) document.body.dataset.tint = tint;
  else delete document.body.dataset.tint;
  document.querySelector("main").replaceWith(document.adoptNode(page.querySelector("main")));
  document.dispatchEvent(new Event(SHOWN));
}

function still() {
  return !document.startViewTransition || matchMedia("(prefers-reduced-motion: reduce)").matches;
}

async function show(href) {
  const mine = ++asked;
  const page = await fetchPage(href);
  if (mine !== asked) return false; // another was asked for in the meantime
  if (still()) put(page);
  else await document.startViewTransition(() => put(page)).updateCallbackDone;
  return true;
}

// From the row of variants the focus stays on the one chosen; from a card it goes to the top.
function settle(fromRow) {
  const chosen = fromRow && document.querySelector(".variant-switch [aria-current]");
  if (chosen) chosen.focus({ preventScroll: true });
  else {
    document.querySelector("main").focus({ preventScroll: true });
    scrollTo({ top: 0 });
  }
}

async function follow(link, event) {
  if (event.button || event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return;
  event.preventDefault();
  const { href } = link;
  const there = new URL(href);
  there.search = location.search; // the light that was chosen is kept
  const fromRow = link.closest(".variant-switch") !== null;
  try {
    if (!(await show(href))) return;
    history.pushState({ variant: true }, "", there);
    settle(fromRow);
  } catch {
    location.href = there.href;
  }
}

document.addEventListener("click", (event) => {
  const link = event.target.closest?.("a[data-variant]");
  if (link) follow(link, event);
});

addEventListener("popstate", () => {
  if (location.hash) return;
  show(location.href).catch(() => location.reload());
});
