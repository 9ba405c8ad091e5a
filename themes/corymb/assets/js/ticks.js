// Ticks on a cut list or on bench sheets, kept on this phone: by the list's day or order and the
// row's stem, not by its place, so that they outlast a new build. A row whose count has changed
// since says so; where more are wanted now, it is only half ticked, and the rest is left.
import { forget, noted, note, tidy } from "./ticked.js";
import { _, plural } from "./words.js";

const list = document.querySelector("[data-ticks]");

class Row {
  constructor(box) {
    this.box = box;
    this.key = box.dataset.tick;
    this.count = Number(box.dataset.count);
    this.was = box.closest("[data-row]").querySelector("[data-was]");
  }

  get left() {
    if (this.box.checked) return 0;
    return this.box.indeterminate ? this.count - this.ticked : this.count;
  }

  show(ticked) {
    this.ticked = ticked;
    const is = ticked !== undefined;
    this.box.checked = is && ticked >= this.count;
    this.box.indeterminate = is && ticked < this.count;
    const changed = is && ticked !== this.count;
    this.was.textContent = changed ? _("was {number} when ticked", { number: ticked }) : "";
    this.was.hidden = !changed;
  }
}

function start() {
  const page = list.dataset.ticks;
  const rows = [...list.querySelectorAll("[data-tick]")].map((box) => new Row(box));
  const [bar, clear] = ["bar", "clear"].map((part) => list.querySelector(`[data-ticks-${part}]`));
  let before = null; // what was cleared, until something is ticked again

  function count() {
    const left = rows.filter((row) => row.left);
    const stems = left.reduce((sum, row) => sum + row.left, 0);
    const numbers = { left: left.length, all: rows.length, number: stems };
    bar.textContent = left.length
      ? plural("{left} of {all} rows left, {number} stem", "{left} of {all} rows left, {number} stems", stems, numbers)
      : _("Nothing left, all is ticked");
    clear.textContent = before ? _("Put the ticks back") : _("Clear the ticks");
    clear.disabled = !before && rows.every((row) => row.ticked === undefined);
  }

  function show() {
    const ticks = noted(page);
    for (const row of rows) row.show(ticks[row.key]?.count);
    count();
  }

  for (const row of rows) {
    row.box.addEventListener("change", () => {
      before = null;
      note(page, row.key, row.box.checked ? row.count : undefined);
      row.show(row.box.checked ? row.count : undefined);
      count();
    });
  }
  clear.addEventListener("click", () => {
    const ticks = noted(page);
    forget(page, before ?? {});
    before = before ? null : ticks;
    show();
  });
  addEventListener("storage", show); // ticked in another window
  addEventListener("pageshow", show); // or before the way back led here
  clear.hidden = false;
  show();
}

tidy();
if (list) start();
