// On the staff's list of style links: copies an address, or hands it to the phone's own share sheet.
function sending(part) {
  const address = part.querySelector("[data-address]").textContent;
  const said = part.querySelector("[data-said]");
  const [copy, share] = ["copy", "share"].map((way) => part.querySelector(`[data-send-${way}]`));

  copy.addEventListener("click", async () => {
    try {
      await navigator.clipboard.writeText(address);
      said.textContent = part.dataset.copied;
    } catch {
      getSelection().selectAllChildren(part.querySelector("[data-address]"));
    }
  });
  share.addEventListener("click", async () => {
    try {
      await navigator.share({ title: part.dataset.title, url: address });
    } catch {
      // The sheet was closed without sending: nothing to say.
    }
  });
  copy.hidden = false;
  share.hidden = !navigator.share || !address.includes("://");
}

for (const part of document.querySelectorAll("[data-send]")) sending(part);
