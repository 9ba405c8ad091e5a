// Asks for the passphrase of a locked site, and leads on to the page that was wanted: the one behind
// `#` at the door, or else the address that this stands at. The passphrase is sent nowhere: the
// worker tries it here, on this phone.
import { DOOR, ask, hold, isOpen, newest, registered, workers } from "./lock.js";
import { ROOT } from "./store.js";
import { _ } from "./words.js";

const form = document.querySelector("[data-locked]");
const [field, stay] = ["passphrase", "stay"].map((name) => document.getElementById(name));
const said = document.querySelector("[data-locked-said]");
const show = form.querySelector("[data-locked-show]");
let busy = false;

const say = (words) => (said.textContent = words);

function whyNot() {
  if (!isSecureContext) return _("Browsers open a locked site only at an address that begins with https.");
  if (!workers) return _("This browser can’t open a locked site here. If this is a private window, try an ordinary one.");
  if (!window.DecompressionStream) return _("This browser is too old to open a locked site.");
  return "";
}

const bare = (path) => path.replace(/\.html$/, ""); // as some hosts have it

// Within the site, and not here again; whoever wrote the link may have written anything.
function wanted() {
  try {
    const page = new URL(location.hash.slice(1), ROOT);
    const within = page.href.startsWith(ROOT.href) && bare(page.pathname) !== bare(DOOR.pathname);
    return within ? page : ROOT;
  } catch {
    return ROOT;
  }
}

// A browser that brings this page back would bring back what was typed.
function leadOn() {
  field.value = "";
  if (bare(location.pathname) !== bare(DOOR.pathname)) return location.reload();
  return location.replace(wanted());
}

// The worker that is here may have the lock of an older build.
async function open() {
  const question = { ask: "open", passphrase: field.value, stay: stay.checked };
  const registration = await registered();
  const here = registration.active;
  const found = here && (await isOpen(here)) !== undefined && (await ask(here, question));
  if (found) return hold(found);
  const newer = await newest(registration);
  return newer !== here && hold(await ask(newer, question));
}

function refuse() {
  say(_("That isn’t the passphrase. Look at capitals, hyphens and spaces, and try again."));
  field.setAttribute("aria-invalid", "true");
  field.focus();
  field.select();
}

async function submit(event) {
  event.preventDefault();
  if (busy || !field.value.trim()) return field.focus();
  busy = true;
  say(_("Opening; it takes a moment."));
  field.removeAttribute("aria-invalid");
  try {
    if (await open()) leadOn();
    else refuse();
  } catch {
    say(_("It can’t be opened just now. The first time takes a signal, and an ordinary window, not a private one."));
  }
  busy = false;
}

show.addEventListener("click", () => {
  const hidden = field.type === "password";
  field.type = hidden ? "text" : "password";
  show.textContent = hidden ? _("Hide") : _("Show");
  field.focus();
});

async function start() {
  const why = whyNot();
  document.querySelector("[data-locked-how]").hidden = !why;
  if (why) return say(why);
  form.hidden = false;
  form.addEventListener("submit", submit);
  if (new URLSearchParams(location.search).has("changed"))
    return say(_("A page is not as it was locked, so it isn’t shown. Tell whoever looks after this site."));
  if (workers.controller && (await isOpen(workers.controller))) return leadOn();
  return field.focus();
}

// The page behind the door is not slid in from it.
addEventListener("pageswap", ({ viewTransition }) => viewTransition?.skipTransition());

start();
