// The record of one's practice: what was made, what was answered, which lessons are learnt. It is on this telephone
// and nowhere else, and holds no name but what one writes oneself.
import { forget, keep, kept } from "./store.js";

const [MADE, ANSWERS, LEARNT, FROM] = ["made", "answers", "learnt", "from"];

export function todayWritten() {
  const now = new Date();
  const two = (number) => String(number).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

export const made = () => kept(MADE, []);
export const answers = () => kept(ANSWERS, []);
export const learnt = () => kept(LEARNT, {});
export const from = () => kept(FROM, "");
export const timesMade = (recipe) => made().filter((piece) => piece.recipe === recipe).length;

export function keepMade(piece) {
  return keep(MADE, [...made(), { ...piece, date: todayWritten() }]);
}

export function deleteMade(place) {
  keep(MADE, made().filter((_piece, at) => at !== place));
}

export function keepAnswers(round) {
  return keep(ANSWERS, [...answers(), { ...round, date: todayWritten() }]);
}

export function keepLearnt(lesson, title, known) {
  const all = { ...learnt() };
  if (known) all[lesson] = { title, date: todayWritten() };
  else delete all[lesson];
  return keep(LEARNT, all);
}

export function keepFrom(name) {
  return name ? keep(FROM, name) : forget(FROM);
}

export function deleteAll() {
  [MADE, ANSWERS, LEARNT, FROM].forEach(forget);
}
