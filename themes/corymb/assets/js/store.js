// What a telephone keeps for this site, a value under each name. Another site on the same host has names of its
// own. Where nothing may be kept, as in a private window, all goes on as if nothing had been.
export const ROOT = new URL("../../../", import.meta.url);

function whole(name) {
  return `corymb ${ROOT.pathname} ${name}`;
}

export function kept(name, otherwise) {
  try {
    return JSON.parse(localStorage.getItem(whole(name))) ?? otherwise;
  } catch {
    return otherwise;
  }
}

// Whether it could be kept.
export function keep(name, value) {
  try {
    localStorage.setItem(whole(name), JSON.stringify(value));
    return true;
  } catch {
    return false;
  }
}

export function forget(name) {
  try {
    localStorage.removeItem(whole(name));
  } catch {
    // Then nothing was kept.
  }
}
