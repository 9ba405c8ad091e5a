// Start something for the page that is shown, and again when variants.js has put another in its place.
export const SHOWN = "corymb:shown";

export function onPage(start) {
  const main = () => document.querySelector("main");
  start(main());
  document.addEventListener(SHOWN, () => start(main()));
}
