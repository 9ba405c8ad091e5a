// A clock that goes on over a reload and a locked screen: it keeps when it was started, not how often it ticked.
import { forget, keep, kept } from "./store.js";

const MINUTE = 60_000;
const STOPPED = { before: 0, since: null, begun: false };

export function clockOf(name) {
  const place = `clock ${name}`;
  const state = () => kept(place, STOPPED);
  const ran = ({ before, since } = state()) => before + (since === null ? 0 : Date.now() - since);
  return {
    ran,
    begun: () => state().begun,
    goes: () => state().since !== null,
    minutes: () => Math.max(1, Math.round(ran() / MINUTE)),
    start() {
      if (state().since === null) keep(place, { before: ran(), since: Date.now(), begun: true });
    },
    pause() {
      keep(place, { before: ran(), since: null, begun: true });
    },
    clear: () => forget(place),
  };
}

// 12:05, or 1:02:05.
export function inFigures(milliseconds) {
  const seconds = Math.floor(milliseconds / 1000);
  const [hours, minutes, rest] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60];
  const two = (number) => String(number).padStart(2, "0");
  return hours ? `${hours}:${two(minutes)}:${two(rest)}` : `${minutes}:${two(rest)}`;
}
