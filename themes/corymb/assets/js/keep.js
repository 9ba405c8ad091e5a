// The marks that keep an arrangement, and the tab that leads to all that was kept.
import { CHANGED, canKeep, kept, keepOnly } from "./keep-list.js";
import { onPage } from "./page.js";

function show() {
  const ids = kept();
  for (const mark of document.querySelectorAll("[data-keep]")) {
    mark.setAttribute("aria-pressed", ids.includes(mark.dataset.keep));
    mark.hidden = false;
  }
  const tab = document.querySelector("[data-keep-tab]");
  if (!tab) return;
  tab.querySelector("[data-keep-count]").textContent = ids.length;
  tab.hidden = !ids.length;
}

function change(id) {
  const ids = kept();
  keepOnly(ids.includes(id) ? ids.filter((each) => each !== id) : [...ids, id]);
}

if (canKeep()) {
  onPage(show);
  document.addEventListener(CHANGED, show);
  addEventListener("pageshow", (event) => event.persisted && show());
  document.addEventListener("click", ({ target }) => {
    const mark = target.closest?.("[data-keep]");
    if (mark) change(mark.dataset.keep);
  });
}
