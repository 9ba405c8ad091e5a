// The record of one's practice: shown, sent as text by mail or by the phone's own share sheet, kept as a file, deleted.
import { draw } from "./curve.js";
import * as practised from "./practised.js";
import { asText, lessonWords, pieceWords, roundWords } from "./telling.js";
import { _, plural } from "./words.js";

const page = document.querySelector("[data-record]");
const part = (name) => page.querySelector(`[data-${name}]`);
const { email, studio } = page.dataset;
const MOST = 1800; // letters of a mail's address: some programs cut off what is longer
const said = part("said");
let file = "";

const record = () => ({ made: practised.made(), answers: practised.answers(), learnt: practised.learnt() });

function trend(pieces) {
  const [first, last] = [pieces[0], pieces.at(-1)];
  const values = { times: pieces.length, first: first.minutes, last: last.minutes, expected: last.expected };
  return pieces.length > 1
    ? _("Made {times} times: {first} min at first, {last} now, about {expected} expected.", values)
    : plural("Made once", "Made {times} times", 1, values);
}

function row(piece, place) {
  const made = part("made-row").content.cloneNode(true);
  const [first, ...rest] = pieceWords(piece);
  made.querySelector("[data-piece]").append(first, ...rest.flatMap((line) => [document.createElement("br"), line]));
  made.querySelector("button").addEventListener("click", () => {
    practised.deleteMade(place);
    show();
    part("head").focus();
  });
  return made;
}

function madePart(name, pieces) {
  const one = part("made-part").content.cloneNode(true);
  one.querySelector("[data-name]").textContent = name;
  one.querySelector("[data-trend]").textContent = trend(pieces.map(({ piece }) => piece));
  draw(one.querySelector("[data-curve]"), pieces.map(({ piece }) => piece));
  one.querySelector("[data-rows]").append(...pieces.map(({ piece, place }) => row(piece, place)));
  return one;
}

function items(list, words) {
  list.replaceChildren(...words.map((word) => {
    const item = document.createElement("li");
    item.textContent = word;
    return item;
  }));
}

// As much of it as a mail's address holds, the newest pieces before older ones.
function mailText(whole) {
  for (let pieces = whole.made.length; pieces > 0; pieces -= 1) {
    const text = asText({ ...whole, made: whole.made.slice(-pieces) }, studio, practised.from());
    if (encodeURIComponent(text).length <= MOST || pieces === 1) return text;
  }
  return asText(whole, studio, practised.from());
}

function write() {
  const whole = record();
  const text = asText(whole, studio, practised.from());
  const subject = encodeURIComponent(_("Practice record"));
  part("text").value = text;
  part("mail").href = `mailto:${email}?subject=${subject}&body=${encodeURIComponent(mailText(whole))}`;
  URL.revokeObjectURL(file);
  file = URL.createObjectURL(new Blob([text], { type: "text/plain" }));
  part("file").href = file;
}

function show() {
  const { made, answers, learnt } = record();
  const lessons = Object.values(learnt);
  const names = [...new Set(made.map((piece) => piece.name))];
  const all = made.map((piece, place) => ({ piece, place }));
  const those = (name) => all.filter(({ piece }) => piece.name === name);
  part("made").replaceChildren(...names.map((name) => madePart(name, those(name))));
  items(part("answers"), answers.map(roundWords));
  items(part("learnt"), lessons.map(lessonWords));
  const there = { made: made.length, answers: answers.length, learnt: lessons.length };
  for (const [name, number] of Object.entries(there)) part(`part="${name}"`).hidden = !number;
  const any = made.length + answers.length + lessons.length > 0;
  part('part="send"').hidden = !any;
  part("none").hidden = any;
  write();
}

part("from").value = practised.from();
part("from").addEventListener("input", ({ target }) => {
  practised.keepFrom(target.value.trim());
  write();
});
part("share").hidden = !navigator.share;
part("share").addEventListener("click", () => {
  navigator.share({ title: _("Practice record"), text: part("text").value }).catch(() => {});
});
part("copy").addEventListener("click", async () => {
  try {
    await navigator.clipboard.writeText(part("text").value);
    said.textContent = _("Copied.");
  } catch {
    part("text").select();
  }
});
part("delete").addEventListener("click", () => {
  if (!confirm(_("Delete the whole record from this telephone?"))) return;
  practised.deleteAll();
  show();
});
show();
