// Listens for a newer build of the page that is open, and shows what stands in its way.
// Sent by `corymb serve` alone; no published page holds it.

(() => {
  const script = document.currentScript;
  let source = null;

  // Only the page that is seen listens: a browser opens few lines to one server.
  function listen() {
    if (document.hidden) {
      source?.close();
      source = null;
    } else if (!source) {
      source = new EventSource(`${script.dataset.events}?${location.pathname}`);
      source.onmessage = (event) => take(JSON.parse(event.data));
    }
  }

  function take(news) {
    if (news.build !== script.dataset.build) {
      source.close();
      location.reload();
      return;
    }
    show(news.trouble);
  }

  function show(trouble) {
    document.getElementById("corymb-trouble")?.remove();
    if (!trouble) return;
    const panel = document.createElement("div");
    panel.id = "corymb-trouble";
    panel.setAttribute("role", "alert");
    // A shadow root, so that neither the page's style nor this one's reaches the other.
    const inside = panel.attachShadow({ mode: "open" });
    inside.adoptedStyleSheets = [style()];
    inside.append(...words(trouble, panel));
    document.body.append(panel);
  }

  function words(trouble, panel) {
    const heading = document.createElement("h2");
    heading.textContent = "Not rebuilt: this page is the last good one";
    const text = document.createElement("pre");
    text.tabIndex = 0;
    text.textContent = trouble;
    const close = document.createElement("button");
    close.textContent = "Hide";
    close.onclick = () => panel.remove();
    return [heading, text, close];
  }

  // Not a <style> element: the pages' own content policy would refuse it.
  function style() {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(`
      :host { all: initial; position: fixed; inset: auto 0 0 0; z-index: 2147483647;
        max-height: 60vh; overflow: auto; box-sizing: border-box; padding: 1rem 1.25rem;
        color: #2b2520; background: #fbf1ea; border-top: 3px solid #a3412a;
        font: 16px/1.4 system-ui, sans-serif; }
      h2 { margin: 0 5rem 0.5rem 0; font-size: 1rem; }
      pre { margin: 0; white-space: pre-wrap; overflow-wrap: anywhere;
        font: 0.875rem/1.45 ui-monospace, monospace; }
      button { position: absolute; top: 0.75rem; right: 1.25rem; font: inherit;
        padding: 0.25rem 0.75rem; }
      @media print { :host { display: none; } }`);
    return sheet;
  }

  document.addEventListener("visibilitychange", listen);
  // A page shown again from the browser's memory may be older than the build.
  addEventListener("pageshow", listen);
  addEventListener("pagehide", () => {
    source?.close();
    source = null;
  });
  listen();
})();
