// The page of what was kept. Its address holds the list, so that it can be opened on another phone; there it
// is shown beside what that phone has kept, and changes nothing.
import { CHANGED, kept, keepOnly, plain } from "./keep-list.js";
import { write } from "./kept-message.js";
import { _, LANGUAGE } from "./words.js";

const page = document.querySelector("[data-kept-page]");
const find = (name) => page.querySelector(`[data-kept-${name}]`);
const list = find("list");
let shown = [];
let own = true;

const known = (id) => page.querySelector(`template[data-look="${id}"]`);
const inAddress = () => plain(location.hash.slice(1).replaceAll("%2C", ",").split(","));

// What this phone kept is marked so in its history: going back to it isn't opening someone's list.
function choose() {
  const sent = inAddress();
  own = !sent.length || history.state?.own === true || sent.join() === kept().join();
  shown = own ? kept() : sent;
  put();
}

function put() {
  history.replaceState({ own }, "", shown.length ? `#${shown.join()}` : location.pathname);
  const here = shown.filter(known);
  list.replaceChildren(...here.map((id) => {
    const look = known(id).content.cloneNode(true);
    look.querySelector("[data-kept-leave]").addEventListener("click", () => leave(id));
    return look;
  }));
  tellGone(shown.filter((id) => !known(id)));
  find("none").hidden = shown.length > 0;
  find("sent").hidden = own;
  find("own").hidden = !kept().length;
  find("message").hidden = !here.length;
  write();
}

function change(ids) {
  shown = ids;
  if (own) keepOnly(ids); // which shows them
  else put();
}

function leave(id) {
  change(shown.filter((each) => each !== id));
  (list.querySelector("button") ?? document.querySelector("main")).focus();
}

function tellGone(ids) {
  const names = ids.map((id) =>
    _("‘{name}’", { name: id.replaceAll("-", " ").replace(/  +/, ", ") }),
  );
  find("gone-said").textContent = _("No longer made here: {names}.", {
    names: new Intl.ListFormat(LANGUAGE).format(names),
  });
  find("gone").hidden = !ids.length;
}

find("forget").addEventListener("click", () => change(shown.filter(known)));
find("take").addEventListener("click", () => {
  own = true;
  change([...new Set([...kept(), ...shown])]);
  document.querySelector("main").focus();
});
find("own").addEventListener("click", (event) => {
  event.preventDefault();
  history.pushState({ own: true }, "", location.pathname);
  choose();
  document.querySelector("main").focus();
});
document.addEventListener(CHANGED, () => {
  if (own) shown = kept();
  put();
});
addEventListener("pageshow", (event) => event.persisted && choose());
addEventListener("hashchange", choose);
find("unscripted").hidden = true;
choose();
