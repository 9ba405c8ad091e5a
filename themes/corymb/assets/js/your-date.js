// Answers for a day. The day is kept in the address, so that it can be sent and gone back to; what can be
// made in its week is said aloud.
import { answering, inAll } from "./dated.js";
import { dayFrom, daysOn, mondayOf, today, weekOf, written } from "./week.js";
import { LANGUAGE, _ } from "./words.js";

const ONE_STEP = 1000; // ms; what is changed faster, as with a held key, is one step back
const LONG = { timeZone: "UTC", day: "numeric", month: "long", year: "numeric" };

const page = document.querySelector("[data-date]");
const part = (name) => page.querySelector(`[data-date-${name}]`);
const input = part("ask").querySelector("input");
const mail = part("mail");
const title = document.title;
const withWeekday = new Intl.DateTimeFormat(LANGUAGE, { ...LONG, weekday: "long" });
const inWords = new Intl.DateTimeFormat(LANGUAGE, LONG);
const words = JSON.parse(page.dataset.words);
const made = dayFrom(page.dataset.today);
const earliest = made > today() ? made : today();
const answerFor = answering(page, words, (day) => inWords.format(day), earliest);
let changed = -ONE_STEP;

function say(day, count, gone = "") {
  for (const [name, words] of Object.entries({ day, count, gone })) part(`says-${name}`).textContent = words;
}

function weekInWords(day) {
  const monday = mondayOf(day);
  return _("Week {week}, {days}.", { week: weekOf(day), days: inWords.formatRange(monday, daysOn(monday, 6)) });
}

function open(chosen) {
  for (const name of ["found", "on", "steps"]) part(name).hidden = !chosen;
  part("months").hidden = chosen;
}

function none(why) {
  open(false);
  document.title = title;
  say("", why);
}

function show(day) {
  const states = answerFor(day);
  const gone = day < earliest;
  const named = withWeekday.format(day);
  const past = gone ? _("That day has gone by; the same week of another year is much like it.") : "";
  say(named, `${weekInWords(day)} ${inAll(states, words)}`, past);
  open(true);
  document.title = `${named} · ${title}`;
  if (mail) mail.href = `${mail.href.split("?")[0]}?subject=${encodeURIComponent(named)}`;
}

function answered(text) {
  return dayFrom(text) !== null && text >= input.min && text <= input.max;
}

// What is wrong with a day that was asked for; a page that nobody has asked anything says nothing.
function fault(asked) {
  if (asked === null) return "";
  if (!asked) return _("The address names no day. Choose one above.");
  if (!dayFrom(asked)) return _("The address says ‘{asked}’, and that isn’t a day. Choose one above.", { asked });
  const [first, last] = [input.min, input.max].map((day) => day.slice(0, 4));
  return _(
    "The address says ‘{asked}’, too far off to answer for. Choose a day from {first} to {last}.",
    { asked, first, last },
  );
}

function read() {
  const asked = new URLSearchParams(location.search).get("date");
  input.value = answered(asked ?? "") ? asked : "";
  if (input.value) show(dayFrom(asked));
  else none(fault(asked));
}

function write() {
  const address = new URL(location.href);
  address.searchParams.delete("date");
  if (input.value) address.searchParams.set("date", input.value);
  const now = performance.now();
  history[now - changed < ONE_STEP ? "replaceState" : "pushState"](null, "", address);
  changed = now;
}

function choose() {
  const unfinished = input.validity.badInput || (input.value && !answered(input.value));
  if (unfinished) return;
  write();
  if (input.value) show(dayFrom(input.value));
  else none("");
}

function go(to) {
  if (!answered(to)) return;
  input.value = to;
  choose();
}

input.addEventListener("input", choose);
part("ask").addEventListener("submit", (event) => event.preventDefault());
for (const each of page.querySelectorAll("[data-date-step]")) {
  const days = Number(each.dataset.dateStep);
  each.addEventListener("click", () => go(written(daysOn(dayFrom(input.value), days))));
}
page.addEventListener("click", ({ target }) => {
  const nearest = target.closest("[data-nearest]");
  if (!nearest) return;
  go(nearest.dataset.nearest);
  input.focus(); // the button has gone with its answer
});
addEventListener("popstate", () => {
  changed = -ONE_STEP;
  read();
});
read();
delete part("ask").dataset.waiting;
