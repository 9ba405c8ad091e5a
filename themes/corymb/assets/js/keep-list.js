// Which arrangements were kept on this phone? A list of their ids, the oldest first, that is sent nowhere.
export const CHANGED = "corymb:kept";

// Another studio's site may stand in another folder of the same host.
const home = document.querySelector(".top-name");
const KEY = `corymb-kept:${home ? new URL("./", home.href).pathname : ""}`;

export function canKeep() {
  if (!location.protocol.startsWith("http")) return false; // a page out of a mail has no list to go with it
  try {
    localStorage.setItem(`${KEY}-tried`, "1");
    localStorage.removeItem(`${KEY}-tried`);
    return true;
  } catch {
    return false;
  }
}

// An id that is written by hand or by another page may be anything.
export function plain(ids) {
  const words = Array.isArray(ids) ? ids.filter((id) => /^[\w-]{1,200}$/.test(id)) : [];
  return [...new Set(words)];
}

export function kept() {
  try {
    return plain(JSON.parse(localStorage.getItem(KEY)));
  } catch {
    return [];
  }
}

export function keepOnly(ids) {
  try {
    localStorage.setItem(KEY, JSON.stringify(plain(ids)));
  } catch {
    // No room on this phone: what was kept before stays.
  }
  document.dispatchEvent(new Event(CHANGED));
}

// Another page of the site, open beside this one, may have changed it.
addEventListener("storage", ({ key }) => {
  if (key === KEY) document.dispatchEvent(new Event(CHANGED));
});
