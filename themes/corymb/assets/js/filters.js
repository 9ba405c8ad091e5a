// Narrows a list down by the choices of its sentence. What is chosen is kept in the address, so that
// a narrowed list can be sent; how many are left is said aloud.

import { _, plural } from "./words.js";

// An entry's data-* hold one word or several, set apart by `|`; the price is the most one would spend.
export function fits(entry, chosen) {
  return chosen.every(([kind, value]) => {
    const held = entry.dataset[kind] ?? "";
    if (kind === "price") return held !== "" && Number(held) <= Number(value);
    return held.split("|").includes(value);
  });
}

function chosenIn(form) {
  return [...new FormData(form)].filter(([, value]) => value !== "");
}

function readAddress(form) {
  for (const [kind, value] of new URLSearchParams(location.search)) {
    const select = form.elements.namedItem(kind);
    if ([...(select?.options ?? [])].some((option) => option.value === value)) select.value = value;
  }
}

function writeAddress(chosen) {
  const query = new URLSearchParams(chosen).toString();
  history.replaceState(history.state, "", location.pathname + (query && `?${query}`) + location.hash);
}

function narrow(list, chosen) {
  const entries = [...list.querySelectorAll("li[data-month]")];
  for (const entry of entries) entry.hidden = !fits(entry, chosen);
  for (const part of list.querySelectorAll("[data-filter-part]")) {
    part.hidden = !part.querySelector("li[data-month]:not([hidden])");
  }
  return [entries.filter((entry) => !entry.hidden).length, entries.length];
}

function words(left, all, chosen) {
  if (!chosen.length) return plural("{all} to choose from.", "{all} to choose from.", all, { all });
  if (!left) return _("Nothing fits. Try another choice.");
  return plural("{left} of {all} fit.", "{left} of {all} fit.", left, { left, all });
}

function start(list) {
  const form = list.querySelector("[data-filters]");
  const count = form.querySelector("[data-filter-count]");
  const clear = form.querySelector("[data-filter-clear]");
  const apply = () => {
    const chosen = chosenIn(form);
    const [left, all] = narrow(list, chosen);
    count.textContent = words(left, all, chosen);
    clear.hidden = !chosen.length;
    writeAddress(chosen);
  };
  readAddress(form);
  delete form.dataset.waiting;
  apply();
  form.addEventListener("change", apply);
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("reset", () => {
    setTimeout(apply); // the choices are put back only after this event
    form.querySelector("select").focus();
  });
}

document.querySelectorAll("[data-filtered]").forEach(start);
