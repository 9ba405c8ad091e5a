// Locks the site again on this phone, in each of its open pages; one that a browser brings back from
// before looks whether it may still be seen.
import { DOOR, ask, hold, isOpen, workers } from "./lock.js";

const button = document.querySelector("[data-lock-again]");
const worker = workers?.controller;

function leave() {
  hold();
  location.replace(DOOR);
}

// A browser asks for what it is to keep as a file past the worker, and would get the host's lost page.
const files = document.querySelectorAll("a[download]:not([data-file])");

if (worker) {
  ask(worker, { ask: "keys" }).then(hold);
  for (const link of files) link.removeAttribute("download");
  button.hidden = false;
  button.addEventListener("click", () => ask(workers.controller, { ask: "lock" }).then(leave));
  workers.addEventListener("message", ({ data }) => data === "locked" && leave());
  addEventListener("pageshow", async ({ persisted }) => {
    if (persisted && !(await isOpen(workers.controller))) leave();
  });
}
