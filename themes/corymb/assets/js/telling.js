// The record as text: sentences for whoever reads it, and below them a line for each thing, to be pasted into a
// spreadsheet (RFC 4180).
import { _, plural } from "./words.js";

const FORMULA = /^[=+\-@\t]/;
const QUOTED = /[",]/;

function dayWords(date) {
  const day = new Date(`${date}T00:00:00Z`);
  const long = { timeZone: "UTC", day: "numeric", month: "long", year: "numeric" };
  return new Intl.DateTimeFormat(document.documentElement.lang, long).format(day);
}

// A cell is quoted where it has to be, and never begins as a formula does.
export function cell(value) {
  const text = String(value ?? "").replace(/\s*[\r\n]+\s*/g, " ");
  const plain = FORMULA.test(text) ? `'${text}` : text;
  return QUOTED.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
}

export function pieceWords({ date, minutes, expected, missed, note }) {
  const signs = missed.length
    ? plural("{number} sign not yet right", "{number} signs not yet right", missed.length, { number: missed.length })
    : _("all signs right");
  const values = { day: dayWords(date), minutes, expected, signs };
  const told = _("{day}: {minutes} min, about {expected} expected; {signs}.", values);
  return [told, ...missed.map((sign) => `- ${sign}`), ...(note ? [_("Note: {note}", { note })] : [])];
}

export function roundWords({ date, right, all, about }) {
  const values = { day: dayWords(date), right, all, about };
  return about
    ? _("{day}: {right} of {all} right, about {about}.", values)
    : _("{day}: {right} of {all} right.", values);
}

export function lessonWords({ title, date }) {
  return _("{title}, {day}", { title, day: dayWords(date) });
}

function byRecipe(pieces) {
  const found = new Map();
  for (const piece of pieces) found.set(piece.name, [...(found.get(piece.name) ?? []), piece]);
  return [...found].flatMap(([name, those]) => [name, ...those.flatMap(pieceWords), ""]);
}

function table({ made, answers, learnt }) {
  const rows = [
    ...made.map((p) => [_("made"), p.date, p.look, p.minutes, p.expected, p.missed.join("; "), p.note]),
    ...answers.map((a) => [_("answered"), a.date, a.about, a.right, a.all, "", ""]),
    ...Object.entries(learnt).map(([lesson, { date }]) => [_("learnt"), date, lesson, "", "", "", ""]),
  ];
  const head = [
    ...[_("What"), _("Date"), _("Of"), _("Minutes, or right"), _("Expected, or all"), _("Not yet right")],
    _("Note"),
  ];
  return [head, ...rows].map((row) => row.map(cell).join(","));
}

export function asText(record, studio, from) {
  const { made, answers, learnt } = record;
  const lessons = Object.values(learnt);
  return [
    _("Practice record for {studio}", { studio }),
    ...(from ? [_("From: {name}", { name: from })] : []),
    "",
    ...byRecipe(made),
    ...(answers.length ? [_("Questions"), ...answers.map(roundWords), ""] : []),
    ...(lessons.length ? [_("Lessons learnt"), ...lessons.map(lessonWords), ""] : []),
    _("For a spreadsheet:"),
    ...table(record),
    "",
  ].join("\r\n");
}
