// What the pages of a locked site ask its worker. It opens the files; the keys are here too as long as
// a page is open, for browsers end workers in between.
import { ROOT } from "./store.js";

export const DOOR = new URL("locked/open.html", ROOT);
const PATIENCE = 1500; // milliseconds, for what needs no time

export const workers = navigator.serviceWorker;

let held;

export const hold = (keys) => (held = keys || undefined);

workers?.addEventListener("message", ({ data, ports }) => {
  if (data === "keys") ports[0].postMessage(held);
});

export function ask(worker, question) {
  return new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => done(data);
    worker.postMessage(question, [port2]);
  });
}

// A worker from before the site was locked has no answer.
export function isOpen(worker) {
  const late = new Promise((done) => setTimeout(done, PATIENCE));
  return Promise.race([ask(worker, { ask: "isOpen" }), late]);
}

function active(worker) {
  return new Promise((done) => {
    const look = () => {
      if (worker.state === "installed") worker.postMessage("take-over");
      if (worker.state === "activated" || worker.state === "redundant") done();
    };
    worker.addEventListener("statechange", look);
    look();
  });
}

// The host's present one; where there is no signal, the one that is here.
export async function newest(registration) {
  await registration.update().catch(() => {});
  const coming = registration.installing ?? registration.waiting;
  if (coming) await active(coming);
  return registration.active;
}

export function registered() {
  return workers.register(new URL("field-worker.js", ROOT), { updateViaCache: "none" });
}
