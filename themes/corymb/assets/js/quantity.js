// Multiplies the table of sizes by a number of pieces. What stands in the table is for one.
import { onPage } from "./page.js";
import { _, plural } from "./words.js";

const MOST = 999;

// A whole number from 1 to MOST, or null for anything else that may be typed on the way there.
export function pieces(text) {
  const number = Number(text);
  return Number.isInteger(number) && number >= 1 && number <= MOST ? number : null;
}

function show(part, number) {
  for (const cell of part.querySelectorAll("[data-one]")) {
    cell.textContent = String(Number(cell.dataset.one) * number);
  }
  const many = () => plural("Stems for {number}", "Stems for {number}", number, { number });
  part.querySelector("[data-quantity-words]").textContent = number === 1 ? _("Stems for one") : many();
}

onPage((main) => {
  const part = main.querySelector("[data-quantity]");
  if (!part) return;
  const ask = part.querySelector("[data-quantity-ask]");
  const input = ask.querySelector("input");
  ask.hidden = false;
  input.addEventListener("input", () => {
    const number = pieces(input.value);
    if (number) show(part, number);
  });
  input.addEventListener("change", () => {
    if (pieces(input.value)) return;
    input.value = "1";
    show(part, 1);
  });
});
