// The phone's folded menu opens by itself (it is a <details>); this closes it again on Escape,
// on a tap elsewhere, and when the focus moves on.
const fold = document.querySelector("[data-menu]");

function close() {
  fold.open = false;
}

if (fold) {
  document.addEventListener("keydown", (event) => {
    if (event.key !== "Escape" || !fold.open) return;
    close();
    fold.querySelector("summary").focus();
  });
  document.addEventListener("click", (event) => {
    if (!fold.contains(event.target)) close();
  });
  fold.addEventListener("focusout", (event) => {
    if (event.relatedTarget && !fold.contains(event.relatedTarget)) close();
  });
}
