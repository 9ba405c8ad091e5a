// Locks the site again on this phone, in each of its open pages; one that a browser brings back from
// before looks whether it may still be seen.
import { DOOR, ask, hold, isOpen, workers } from "./lock.js";

const FETCHED_BY = 60_000; // milliseconds in which a browser has taken a file

const button = document.querySelector("[data-lock-again]");
const files = document.querySelectorAll("a[download]:not([data-file])");
const worker = workers?.controller;

function leave() {
  hold();
  location.replace(DOOR);
}

// A browser asks for a file to keep past the worker, and would get the host's page for what is lost.
async function handOver(event) {
  event.preventDefault();
  const { href, pathname } = event.currentTarget;
  const answer = await fetch(href);
  const file = document.createElement("a");
  file.href = URL.createObjectURL(await answer.blob());
  file.download = pathname.split("/").at(-1);
  file.click();
  setTimeout(() => URL.revokeObjectURL(file.href), FETCHED_BY);
}

if (worker) {
  ask(worker, { ask: "keys" }).then(hold);
  for (const link of files) link.addEventListener("click", handOver);
  button.hidden = false;
  button.addEventListener("click", () => ask(workers.controller, { ask: "lock" })); // it tells all
  workers.addEventListener("message", ({ data }) => data === "locked" && leave());
  addEventListener("pageshow", async ({ persisted }) => {
    if (persisted && !(await isOpen(workers.controller))) leave();
  });
}
