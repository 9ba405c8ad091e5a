// The staff's site on a phone: has it kept for no signal, and offers a newer build. It takes https
// or localhost; anywhere else, and where the site is served while it is written, nothing is kept
// and nothing said.
import { remember, sayHowMuch } from "./offline-line.js";
import { ROOT } from "./store.js";

const BREATH = 60_000; // milliseconds between two questions for a newer build

const workers = navigator.serviceWorker;
const beingWritten = document.querySelector("script[data-events]");
const offer = document.querySelector("[data-newer]");
let wanted = false; // the newer build, by whoever reads this page
let asked = 0;
let newest = false; // the host was asked, and has no newer build

function hear({ data }) {
  if (!data.all) return; // not of how much is kept
  if (newest && data.have === data.all) remember();
  sayHowMuch(data);
}

async function ask(registration) {
  if (navigator.onLine === false || Date.now() - asked < BREATH) return;
  asked = Date.now();
  try {
    await registration.update();
  } catch {
    return; // no signal after all
  }
  newest = !registration.installing && !registration.waiting;
  registration.active?.postMessage("fill"); // it answers how much is kept
}

function makeOffer(registration) {
  const show = () => workers.controller && registration.waiting && (offer.hidden = false);
  show();
  registration.addEventListener("updatefound", () => {
    newest = false;
    registration.installing?.addEventListener("statechange", show);
  });
  offer.querySelector("[data-newer-show]").addEventListener("click", () => {
    wanted = true;
    if (registration.waiting) registration.waiting.postMessage("take-over");
    else location.reload();
  });
  offer.querySelector("[data-newer-later]").addEventListener("click", () => (offer.hidden = true));
}

// Where another page took the newer build, this one is not taken from under its reader's hands.
function changeOver(before) {
  if (wanted) location.reload();
  else if (before) offer.hidden = false;
}

async function start() {
  let before = workers.controller;
  workers.addEventListener("message", hear);
  workers.addEventListener("controllerchange", () => {
    changeOver(before);
    before = workers.controller;
  });
  const address = new URL("field-worker.js", ROOT);
  const registration = await workers.register(address, { updateViaCache: "none" });
  makeOffer(registration);
  const again = () => document.hidden || ask(registration);
  document.addEventListener("visibilitychange", again);
  addEventListener("online", again);
  (await workers.ready).active.postMessage("fill");
  await ask(registration);
}

async function leave() {
  for (const one of await workers.getRegistrations()) {
    if (one.scope === ROOT.href) await one.unregister();
  }
}

function tryAgain(link) {
  const page = new URLSearchParams(location.search).get("page");
  if (page === null) return;
  const there = new URL(page, ROOT);
  if (!there.href.startsWith(ROOT.href)) return;
  link.href = there;
  link.hidden = false;
}

const link = document.querySelector("[data-again]");
if (link) tryAgain(link);
if (workers && isSecureContext) {
  const begun = beingWritten ? leave() : start();
  begun.catch(() => {}); // no host that lets itself be kept, or a browser that forbids it
}
