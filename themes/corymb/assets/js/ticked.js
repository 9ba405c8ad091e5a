// Where ticks are kept: in the browser's own store on this phone, a list an entry, and in memory
// alone where the browser allows no store. A list that nobody has ticked for six weeks is dropped.
import { ROOT } from "./store.js";

const OURS = `corymb-ticks:${ROOT.pathname}:`;
const SIX_WEEKS = 42 * 86_400_000; // milliseconds

const memory = new Map(); // what the store did not take, for as long as the page is open

function read(name) {
  if (memory.has(name)) return memory.get(name);
  try {
    return JSON.parse(localStorage.getItem(name)) ?? {};
  } catch {
    return {};
  }
}

function write(name, ticks) {
  try {
    if (Object.keys(ticks).length) localStorage.setItem(name, JSON.stringify(ticks));
    else localStorage.removeItem(name);
    memory.delete(name);
  } catch {
    memory.set(name, ticks);
  }
}

// The ticks of a list by row: how many stems it was when it was ticked, and when that was.
export function noted(page) {
  return read(OURS + page);
}

export function note(page, key, count) {
  const { [key]: _old, ...others } = noted(page);
  write(OURS + page, count === undefined ? others : { ...others, [key]: { count, at: Date.now() } });
}

// All ticks of a list go, or others come in their place.
export function forget(page, instead) {
  write(OURS + page, instead);
}

export function tidy(now = Date.now()) {
  try {
    const names = Object.keys(localStorage).filter((name) => name.startsWith(OURS));
    for (const name of names) {
      const latest = Math.max(0, ...Object.values(read(name)).map((tick) => tick.at ?? 0));
      if (now - latest > SIX_WEEKS) localStorage.removeItem(name);
    }
  } catch {
    // no store, nothing to tidy
  }
}
