// A style link's page: hides itself after its last day, and puts what is ticked into the answer. The address
// of the mail as it was written holds every look, for whoever has ticked none.
const page = document.querySelector(".link");

// By the visitor's own clock, since nobody builds the site at midnight.
function isOver(day) {
  const [year, month, date] = day.split("-").map(Number);
  return new Date() >= new Date(year, month - 1, date + 1);
}

function mailto({ address, subject }, text) {
  return `mailto:${address}?subject=${encodeURIComponent(subject)}&body=${encodeURIComponent(text)}`;
}

function listed(list, chosen) {
  list.replaceChildren(...chosen.map((words) => {
    const item = document.createElement("li");
    item.textContent = words;
    return item;
  }));
}

function answering(part) {
  const find = (name) => part.querySelector(`[data-${name}]`);
  const boxes = [...page.querySelectorAll("[data-choice]")];
  const [mail, share, copy, said, bar] = ["answer-mail", "answer-share", "answer-copy", "answer-said", "bar"].map(find);
  const whole = mail.href;
  const chosen = () => boxes.filter((box) => box.checked).map((box) => box.value);
  const written = (end) => [part.dataset.begin, ...chosen().map((words) => `- ${words}`), ...end].join("\r\n");

  function show() {
    const words = chosen();
    find("none").hidden = words.length > 0;
    listed(find("chosen"), words);
    mail.href = words.length ? mailto(part.dataset, written(["", part.dataset.end, "", ""])) : whole;
    for (const button of [share, copy]) button.disabled = !words.length;
    bar.hidden = !words.length;
    const count = find("bar-said");
    count.textContent = count.dataset.words.replace("{number}", words.length);
    said.textContent = "";
  }

  async function sendOn() {
    try {
      await navigator.share({ title: part.dataset.subject, text: `${part.dataset.subject}\n${written([])}` });
    } catch {
      // The sheet was closed without sending: nothing to say.
    }
  }

  async function toClipboard() {
    const text = `${part.dataset.subject}\r\n${written([])}`;
    try {
      await navigator.clipboard.writeText(text);
      said.textContent = part.dataset.copied;
    } catch {
      said.textContent = text;
    }
  }

  find("unscripted").hidden = true;
  share.hidden = !navigator.share;
  copy.hidden = false;
  share.addEventListener("click", sendOn);
  copy.addEventListener("click", toClipboard);
  for (const box of boxes) box.addEventListener("change", show);
  show();
}

if (page.dataset.until && isOver(page.dataset.until)) {
  for (const part of page.querySelectorAll("[data-standing]")) part.remove();
  page.querySelector("[data-over]").hidden = false;
} else {
  const part = page.querySelector("[data-answer]");
  if (part) answering(part);
}
