// One message out of what was kept: a mail with everything filled in, the phone's own share sheet, or a copy.
import { _, LANGUAGE } from "./words.js";

const MOST_MAIL = 1900; // letters in an address that every mail program takes: from memory, about 2,000

const page = document.querySelector("[data-kept-page]");
const find = (name) => page.querySelector(`[data-kept-${name}]`);

function day() {
  const [year, month, date] = find("day").value.split("-").map(Number);
  if (!date) return "";
  return new Intl.DateTimeFormat(LANGUAGE, { dateStyle: "full" }).format(new Date(year, month - 1, date));
}

const subject = () => (day() ? _("What we like, for {day}", { day: day() }) : _("What we like"));

// The names with their pages, where there is room for them; all of it on one page is one more address.
function lines(withPages) {
  const looks = [...find("list").querySelectorAll("[data-kept-name]")].flatMap((link) => [
    `- ${link.dataset.keptName}`,
    ...(withPages ? [`  ${link.href}`] : []),
  ]);
  const words = find("words").value.trim();
  return [
    _("This is what we like:"),
    ...looks,
    ...(day() ? ["", _("For {day}.", { day: day() })] : []),
    ...(words ? ["", words] : []),
    "",
    _("All of it on one page: {address}", { address: location.href }),
  ];
}

function mailto(withPages) {
  const body = encodeURIComponent([...lines(withPages), "", ""].join("\r\n"));
  return `${find("mail").href.split("?")[0]}?subject=${encodeURIComponent(subject())}&body=${body}`;
}

export function write() {
  const mail = find("mail");
  if (mail) mail.href = mailto(mailto(true).length <= MOST_MAIL);
  find("said").textContent = "";
}

async function share() {
  try {
    await navigator.share({ title: subject(), text: [subject(), ...lines(true)].join("\n") });
  } catch {
    // The sheet was closed without sending: nothing to say.
  }
}

async function copy() {
  const text = [subject(), ...lines(true)].join("\r\n");
  try {
    await navigator.clipboard.writeText(text);
    find("said").textContent = _("Copied.");
  } catch {
    find("said").textContent = text;
  }
}

find("share").hidden = !navigator.share;
find("share").addEventListener("click", share);
find("copy").addEventListener("click", copy);
for (const field of [find("day"), find("words")]) field.addEventListener("input", write);
