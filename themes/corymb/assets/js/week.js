// Days as the address writes them, and the week of a day by ISO 8601: Monday to Sunday, counted to the
// year of its Thursday. A day here is midnight in UTC, so that no summer time can move it.
const DAY = 86_400_000; // milliseconds
export const CELLS = 52; // of the year at a glance; a 53rd week is shown as the last

// A day of the calendar written 2026-09-19, or null.
export function dayFrom(text) {
  if (!/^\d{4}-\d\d-\d\d$/.test(text)) return null;
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && written(day) === text ? day : null;
}

export function written(day) {
  return day.toISOString().slice(0, 10);
}

export function daysOn(day, count) {
  return new Date(day.getTime() + count * DAY);
}

export function mondayOf(day) {
  return daysOn(day, -((day.getUTCDay() + 6) % 7));
}

export function weekOf(day) {
  const thursday = daysOn(mondayOf(day), 3);
  const newYear = Date.UTC(thursday.getUTCFullYear(), 0, 1);
  return Math.floor((thursday.getTime() - newYear) / DAY / 7) + 1;
}

// Which of the year's 52 cells a day falls in, 0 to 51.
export function cellOf(day) {
  return Math.min(weekOf(day), CELLS) - 1;
}

// The day it is where the visitor is.
export function today() {
  const now = new Date();
  return new Date(Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()));
}
