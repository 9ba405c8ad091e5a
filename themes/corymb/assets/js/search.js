// Search by the beginnings of words, accents aside, over the list of all pages (search.json).

const MOST = 60; // found pages that are listed: more than anyone reads before typing another letter

export function fold(text) {
  return text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
}

export function wordsOf(text) {
  return fold(text).match(/[\p{L}\p{N}]+/gu) ?? [];
}

// A word in the name counts for more than one in the text; every word asked for must begin some word.
export function score(page, asked) {
  let sum = 0;
  for (const word of asked) {
    if (page.titleWords.includes(word)) sum += 6;
    else if (page.titleWords.some((own) => own.startsWith(word))) sum += 4;
    else if (page.textWords.some((own) => own.startsWith(word))) sum += 1;
    else return 0;
  }
  return sum;
}

export function find(pages, query) {
  const asked = wordsOf(query);
  if (!asked.length) return [];
  return pages
    .map((page) => ({ page, points: score(page, asked) }))
    .filter(({ points }) => points > 0)
    .sort((a, b) => b.points - a.points || a.page.title.localeCompare(b.page.title))
    .map(({ page }) => page);
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

async function start(form) {
  const input = form.querySelector("input");
  const list = document.querySelector("[data-search-found]");
  const count = document.querySelector("[data-search-count]");
  const root = new URL(form.dataset.index, location.href);
  const show = (pages) => {
    const found = find(pages, input.value);
    list.replaceChildren(...found.slice(0, MOST).map((page) => entry(page, root)));
    const query = input.value.trim();
    count.textContent = query ? `${found.length || "Nothing"} found.` : "";
    const address = query ? `?q=${encodeURIComponent(query)}` : location.pathname;
    history.replaceState(history.state, "", address);
  };
  input.value = new URLSearchParams(location.search).get("q") ?? "";
  try {
    const pages = (await (await fetch(root)).json()).map(prepare);
    show(pages);
    input.addEventListener("input", () => show(pages));
    form.addEventListener("submit", (event) => event.preventDefault());
  } catch {
    count.textContent = "The list of pages could not be fetched; searching takes a connection.";
  }
}

if (typeof document !== "undefined") {
  const form = document.querySelector("[data-search]");
  if (form) start(form);
}
