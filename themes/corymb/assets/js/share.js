// 'Send the link': the phone's own share sheet where there is one, otherwise the address is copied.
// If neither works the link still is what it was without script, a mail. And a button that prints.
import { onPage } from "./page.js";
import { _ } from "./words.js";

// With `data-share="here"` what the page was asked in its address is sent along.
function address(link) {
  const canonical = document.querySelector('link[rel="canonical"]');
  if (!canonical) return location.href.split("#")[0];
  return canonical.href + (link.dataset.share === "here" ? location.search : "");
}

async function send(event, said) {
  const what = { title: document.title, url: address(event.currentTarget) };
  if (navigator.share) {
    event.preventDefault();
    try {
      await navigator.share(what);
    } catch {
      // The sheet was closed without sending: nothing to say.
    }
    return;
  }
  if (!navigator.clipboard) return;
  event.preventDefault();
  try {
    await navigator.clipboard.writeText(what.url);
    said.textContent = _("Link copied.");
  } catch {
    said.textContent = what.url;
  }
}

onPage((main) => {
  const link = main.querySelector("[data-share]");
  const print = main.querySelector("[data-print]");
  if (link) {
    const said = main.querySelector("[data-share-said]");
    link.hidden = false;
    link.addEventListener("click", (event) => send(event, said));
  }
  if (print) {
    print.hidden = false;
    print.addEventListener("click", () => window.print());
  }
});
