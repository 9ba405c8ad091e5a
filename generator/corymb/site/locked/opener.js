// Opens a locked site on the phone itself. It stands before the worker that keeps the site's files,
// which asks it where a file stands and what is in it; on the host, on the way and in what is kept
// all files are sealed. The keys stay in this browser, in a form that no script can read out: with the
// pages that are open, and stored only where the phone is to stay open.
self.lock = (() => {
  const TOLD = "{{told}}";
  const ROOT = self.registration.scope;
  const DOOR = new URL(TOLD.door, ROOT).href;
  const FOLDER = new URL(ROOT).pathname;
  const SEALED = new URL(TOLD.sealed, ROOT).href;
  const STORE = "keys";
  const OPEN = "open"; // the name of the keys that are stored there
  const LOCKED = "locked"; // and of the moment at which the site was locked again
  const PATIENCE = 1000; // milliseconds that a page has to answer
  const NONCE_BYTES = 12;
  const NAME_LETTERS = 32;
  const NEW_LINE = 10;

  const utf8 = (text) => new TextEncoder().encode(text);
  const bytes = (hex) => Uint8Array.from(hex.match(/../g), (two) => Number.parseInt(two, 16));
  const hex = (buffer) =>
    Array.from(new Uint8Array(buffer), (byte) => byte.toString(16).padStart(2, "0")).join("");

  function stored(act, mode = "readonly") {
    return new Promise((done, fail) => {
      const opening = indexedDB.open(`corymb lock ${FOLDER}`, 1);
      opening.onupgradeneeded = () => opening.result.createObjectStore(STORE);
      opening.onerror = () => fail(opening.error);
      opening.onsuccess = () => {
        const deal = opening.result.transaction(STORE, mode);
        const asked = act(deal.objectStore(STORE));
        deal.oncomplete = () => done(asked.result);
        deal.onabort = () => fail(deal.error);
        deal.addEventListener("complete", () => opening.result.close());
      };
    });
  }

  const windows = async () => {
    const all = await self.clients.matchAll({ type: "window", includeUncontrolled: true });
    return all.filter(({ url }) => url.startsWith(ROOT));
  };

  let known; // while this worker lives
  let locks = 0; // how often it was locked in that time

  // Those of another passphrase are none.
  const fitting = (had) => (had?.salt === TOLD.salt ? had : undefined);

  function askFor(page) {
    return new Promise((done) => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = ({ data }) => done(data);
      page.postMessage("keys", [port2]);
    });
  }

  // One that a browser brings back may have keys from before the site was locked.
  async function heldByPages() {
    const locked = (await stored((store) => store.get(LOCKED))) ?? 0;
    const valid = (had) => (fitting(had)?.since > locked ? had : Promise.reject());
    const asked = (await windows()).map((page) => askFor(page).then(valid));
    const late = new Promise((done) => setTimeout(done, PATIENCE));
    return Promise.race([Promise.any(asked).catch(() => undefined), late]);
  }

  // A browser ends a worker that has nothing to do; the pages have the keys then. When the last of
  // them is closed they are gone.
  // What was found while somebody locked is none.
  async function keys() {
    if (known) return known;
    const before = locks;
    const found = fitting(await stored((store) => store.get(OPEN))) ?? (await heldByPages());
    if (before === locks) known ??= found;
    return known;
  }

  // As `keys.py` has it: stretched, and parted into two.
  async function keysFrom(passphrase) {
    const { subtle } = crypto;
    const typed = utf8(passphrase.normalize("NFKC").trim());
    const slow = { name: "PBKDF2", hash: "SHA-256", salt: bytes(TOLD.salt), iterations: TOLD.rounds };
    const from = await subtle.importKey("raw", typed, "PBKDF2", false, ["deriveBits"]);
    const stretched = await subtle.deriveBits(slow, from, 256);
    const whole = await subtle.importKey("raw", stretched, "HKDF", false, ["deriveKey"]);
    const parted = (info, kind, uses) => {
      const by = { name: "HKDF", hash: "SHA-256", salt: new Uint8Array(), info: utf8(info) };
      return subtle.deriveKey(by, whole, kind, false, uses);
    };
    const naming = { name: "HMAC", hash: "SHA-256", length: 256 };
    return {
      files: await parted("corymb files", { name: "AES-GCM", length: 256 }, ["decrypt"]),
      names: await parted("corymb names", naming, ["sign"]),
      salt: TOLD.salt,
      since: Date.now(),
    };
  }

  function unsealed(key, path, sealed) {
    const how = {
      name: "AES-GCM",
      iv: sealed.subarray(0, NONCE_BYTES),
      additionalData: utf8(path),
    };
    return crypto.subtle.decrypt(how, key, sealed.subarray(NONCE_BYTES));
  }

  async function tryOn(passphrase, stay) {
    const found = await keysFrom(passphrase);
    try {
      await unsealed(found.files, "", bytes(TOLD.check));
    } catch {
      return false;
    }
    known = found;
    await stored((store) => (stay ? store.put(found, OPEN) : store.delete(OPEN)), "readwrite");
    return found;
  }

  async function lockAgain() {
    known = undefined;
    locks += 1;
    await stored((store) => store.delete(OPEN) && store.put(Date.now(), LOCKED), "readwrite");
    for (const page of await windows()) page.postMessage("locked");
    return true;
  }

  function pathOf(url) {
    const path = new URL(url).pathname.slice(FOLDER.length);
    try {
      return decodeURIComponent(path);
    } catch {
      return path; // a stray %, in an address that leads nowhere
    }
  }

  const whole = (path) => (!path || path.endsWith("/") ? `${path}index.html` : path);
  const isForAnyone = (path) => TOLD.forAnyone.some((begin) => path.startsWith(begin));

  async function sealedAt(path) {
    const { names } = (await keys()) ?? {};
    if (!names) throw new Error("locked");
    const digest = hex(await crypto.subtle.sign("HMAC", names, utf8(path)));
    return `${SEALED}${digest.slice(0, NAME_LETTERS)}.bin`;
  }

  async function contentOf(answer, path) {
    const { files } = (await keys()) ?? {};
    const sealed = new Uint8Array(await answer.arrayBuffer());
    const whole = new Uint8Array(await unsealed(files, path, sealed));
    const end = whole.indexOf(NEW_LINE);
    const [how, ...type] = new TextDecoder().decode(whole.subarray(0, end)).split(" ");
    const content = new Blob([whole.subarray(end + 1)]).stream();
    const body = how === "deflate" ? content.pipeThrough(new DecompressionStream(how)) : content;
    // What such a page fetches next would tell the host the page's address.
    return { body, headers: { "Content-Type": type.join(" "), "Referrer-Policy": "no-referrer" } };
  }

  const answers = {
    open: ({ passphrase, stay }) => tryOn(passphrase, stay),
    isOpen: async () => Boolean(await keys()),
    keys,
    lock: lockAgain,
  };

  self.addEventListener("message", (event) => {
    const { ask } = event.data ?? {};
    if (!Object.hasOwn(answers, ask ?? "")) return;
    const answer = (value) => event.ports[0].postMessage(value);
    event.waitUntil(answers[ask](event.data).then(answer, () => answer(null)));
  });

  return {
    isForAnyone,

    // Where what is asked for stands on the host, and in what is kept.
    async stands(url) {
      const path = pathOf(url);
      if (isForAnyone(path)) return url;
      return sealedAt(whole(path));
    },

    // What is in it, to be read; for what isn't there, the page that says so. What was changed since
    // it was sealed is not shown.
    async opened(answer, url, lost) {
      const path = pathOf(url);
      if (isForAnyone(path)) return answer;
      if (!answer.ok) return lost();
      try {
        const { body, headers } = await contentOf(answer, whole(path));
        return new Response(body, { headers });
      } catch {
        return Response.redirect(`${DOOR}?changed`);
      }
    },

    // Of what was visited: nothing of a time when the site was not locked.
    mayStay: (url) => url.startsWith(SEALED),

    // To the door, which leads back here. The worker may outlive the last page for a while.
    async away(url) {
      if (!(await windows()).length) known = undefined;
      if (isForAnyone(pathOf(url)) || (await keys())) return undefined;
      return Response.redirect(`${DOOR}#${url.slice(ROOT.length)}`);
    },
  };
})();
