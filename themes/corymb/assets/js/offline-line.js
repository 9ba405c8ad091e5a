// The line that says what this phone has kept for no signal, and as of when: the last moment at
// which the host was asked for a newer build and had none, with all of this one here.
import { keep, kept } from "./store.js";
import { _ } from "./words.js";

const SINCE = "kept-since";
const lines = document.querySelectorAll("[data-kept]");

function said(moment) {
  const time = new Date(moment);
  const today = time.toDateString() === new Date().toDateString();
  const day = today ? {} : { weekday: "short", day: "numeric", month: "short" };
  const clock = { hour: "2-digit", minute: "2-digit", ...day };
  return new Intl.DateTimeFormat(document.documentElement.lang, clock).format(time);
}

function say(words) {
  for (const line of lines) {
    line.textContent = words;
    line.hidden = false;
  }
}

// Where nothing can be kept the line says nothing of when.
export const remember = () => keep(SINCE, Date.now());

export function sayHowMuch({ have, all }) {
  const moment = kept(SINCE, 0);
  if (have < all) say(_("Kept for no signal so far: {have} of {all} files", { have, all }));
  else if (moment) say(_("Kept for no signal: {when}", { when: said(moment) }));
  else say(_("Kept for no signal"));
}
