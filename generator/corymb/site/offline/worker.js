// Keeps the staff's pages on a phone, for a field without signal. Why it answers as it does stands
// in the module that writes it. Each build has a worker of its own, known by its version.
const VERSION = "{{version}}";
const ROOT = self.registration.scope;
const OURS = `corymb-kept:${ROOT}:`;
const KEPT = OURS + VERSION;
const VISITED = `corymb-visited:${ROOT}`;
const LIST = new URL("{{list}}", ROOT).href;
const NO_SIGNAL = new URL("{{no_signal}}", ROOT);
const DIGEST = "x-corymb-digest"; // of what is kept: the file may have been of an older build
const HOW_MUCH = new URL("how-much-is-kept", ROOT).href; // stands in the cache, and nowhere else
const PATIENCE = 3000; // milliseconds
const MOST_VISITED = 150;
const AT_ONCE = 6;
const NOT_KEPT =
  '<svg xmlns="http://www.w3.org/2000/svg" width="40" height="40"><path d="M.5.5h39v39H.5z" ' +
  'fill="none" stroke="#888" stroke-dasharray="2 4"/></svg>';

// A locked site has its own words for where a file stands, what is in it, and who may see it.
const lock = self.lock ?? {
  isForAnyone: () => true,
  stands: async (url) => url,
  opened: async (answer) => answer,
  away: async () => undefined,
  mayStay: () => true,
};

let read = null; // the list, once it was read
let filling = null;

const address = (path) => new URL(path, ROOT).href;

async function list() {
  const kept = await caches.open(KEPT);
  const had = await kept.match(LIST);
  if (had) return had.json();
  const answer = await fetch(`${LIST}?${VERSION}`, { cache: "reload" });
  const told = await answer.clone().json();
  if (told.version !== VERSION) throw new Error("the build was changed on the way");
  await kept.put(LIST, answer);
  return told;
}

// A redirected answer may not be given for a page, and the body is no longer packed.
async function asKept(answer, digest) {
  const headers = new Headers(answer.headers);
  for (const name of ["content-encoding", "content-length"]) headers.delete(name);
  headers.set(DIGEST, digest);
  return new Response(await answer.blob(), { headers });
}

async function older() {
  const names = (await caches.keys()).filter((name) => name.startsWith(OURS) && name !== KEPT);
  return Promise.all(names.map((name) => caches.open(name)));
}

// What was kept of a file before: the same if there is one, or else any that is better than none.
async function keptBefore(before, path, digest) {
  const found = await Promise.all(before.map((cache) => cache.match(address(path))));
  const there = found.filter(Boolean);
  return there.find((each) => each.headers.get(DIGEST) === digest) ?? there[0];
}

// Whether the file is there now as this build has it. One that can't be had stops no other.
async function keep(kept, before, [path, digest]) {
  const had = (await kept.match(address(path))) ?? (await keptBefore(before, path, digest));
  const same = had?.headers.get(DIGEST) === digest;
  try {
    if (!same) {
      // With the digest behind it, no cache on the way has an older one.
      const answer = await fetch(`${address(path)}?${digest}`, { cache: "reload" });
      if (!answer.ok) throw new Error(answer.status);
      await kept.put(address(path), await asKept(answer, digest));
      return true;
    }
  } catch {
    // below: an older one
  }
  if (had && before.length) await kept.put(address(path), had);
  return same;
}

async function keepAll(files, tell = () => {}) {
  const [kept, before] = [await caches.open(KEPT), await older()];
  const left = [...files];
  let have = 0;
  const lane = async () => {
    for (let file; (file = left.shift()); ) {
      if (await keep(kept, before, file)) have += 1;
      tell(have);
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, lane));
  return have;
}

// What is carried out comes first, and whatever the phone has kept of an older build comes along.
// Of a locked site a stranger's phone gets no more than the door.
async function install() {
  const { first, later } = await list();
  const before = await older();
  await keepAll(before.length ? first : first.filter(([path]) => lock.isForAnyone(path)));
  const there = await Promise.all(later.map(([path]) => keptBefore(before, path, "")));
  await keepAll(later.filter((_file, at) => there[at]));
}

async function activate() {
  const olds = (await caches.keys()).filter((name) => name.startsWith(OURS) && name !== KEPT);
  await Promise.all(olds.map((name) => caches.delete(name)));
  const visited = await caches.open(VISITED);
  const strange = (await visited.keys()).filter(({ url }) => !lock.mayStay(url));
  await Promise.all(strange.map((each) => visited.delete(each)));
  await self.clients.claim();
}

async function tell(howMuch) {
  const pages = await self.clients.matchAll();
  for (const page of pages) page.postMessage(howMuch);
}

// The rest, a few at a time; what is missing is tried again whenever a page asks.
async function fill() {
  const kept = await caches.open(KEPT);
  const { have = 0, all } = (await (await kept.match(HOW_MUCH))?.json()) ?? {};
  if (have) await tell({ have, all });
  if (have && have === all) return;
  const { first, later } = await list();
  const files = [...first, ...later];
  const howMuch = (number) => ({ have: number, all: files.length });
  const often = (number) => number <= have || number % 20 || tell(howMuch(number));
  const now = howMuch(await keepAll(files, often));
  await kept.put(HOW_MUCH, new Response(JSON.stringify(now)));
  await tell(now);
}

// Kept under its own address, whatever is asked of it behind the question mark; hosts leave out
// the end of a page's name, or the name of a folder's first page.
async function keptAt(asked) {
  const kept = await caches.open(KEPT);
  const { origin, pathname } = new URL(asked);
  const ends = pathname.endsWith("/") ? ["index.html"] : ["", ".html"];
  for (const end of ends) {
    const url = origin + pathname + end;
    const found = await kept.match(await lock.stands(url));
    if (found) return lock.opened(found, url);
  }
  return undefined;
}

// The same photo in the width that is kept; the drawing itself for one in pixels.
async function inAnotherSize(url) {
  const [, drawn] = url.match(/^(.*assets\/pictures\/[^/.]+)[^/]*\.avif$/) ?? [];
  if (drawn) return keptAt(`${drawn}.svg`);
  const [, photo] = url.match(/(assets\/photos\/[^/]+-)\d+\.\w+$/) ?? [];
  if (!photo) return undefined;
  read ??= await (await keptAt(LIST))?.json();
  if (!read) return undefined;
  const found = [...read.first, ...read.later].find(([path]) => path.startsWith(photo));
  return found && keptAt(address(found[0]));
}

async function noteVisit(url, answer) {
  if (!answer.ok || answer.redirected) return;
  const visited = await caches.open(VISITED);
  await visited.put(url, answer);
  const all = await visited.keys();
  await Promise.all(all.slice(0, -MOST_VISITED).map((old) => visited.delete(old)));
}

async function fromNetwork(event) {
  const { request } = event;
  const at = await lock.stands(request.url);
  const visited = await caches.open(VISITED);
  const had = await visited.match(at);
  const asked = fetch(at === request.url ? request : at).then((answer) => {
    event.waitUntil(noteVisit(at, answer.clone()));
    return answer;
  });
  const late = new Promise((done) => had && setTimeout(() => done(had), PATIENCE));
  const answer = await Promise.race([had ? asked.catch(() => had) : asked, late]);
  return lock.opened(answer, request.url, lost);
}

// In place of a page of a locked site that its host hasn't got.
async function lost() {
  const { body, headers } = (await keptAt(address("404.html"))) ?? Response.error();
  return new Response(body, { status: 404, headers });
}

// When a newer build is ready and nobody else looks at the old one, opening a page is the moment.
async function changesNow() {
  const { waiting } = self.registration;
  if (!waiting || (await self.clients.matchAll()).length > 1) return false;
  waiting.postMessage("take-over");
  return true;
}

async function page(event) {
  const away = await lock.away(event.request.url);
  if (away) return away;
  if (await changesNow()) return new Response("", { headers: { Refresh: "0" } });
  const kept = await keptAt(event.request.url);
  if (kept) return kept;
  try {
    return await fromNetwork(event);
  } catch {
    NO_SIGNAL.search = `?page=${encodeURIComponent(event.request.url.slice(ROOT.length))}`;
    return Response.redirect(NO_SIGNAL.href);
  }
}

async function part(event) {
  const { url, destination } = event.request;
  const kept = (await keptAt(url)) ?? (await inAnotherSize(url));
  if (kept) return kept;
  try {
    return await fromNetwork(event);
  } catch (error) {
    if (destination !== "image") return Response.error();
    return new Response(NOT_KEPT, { headers: { "Content-Type": "image/svg+xml" } });
  }
}

self.addEventListener("install", (event) => event.waitUntil(install()));
self.addEventListener("activate", (event) => event.waitUntil(activate()));
self.addEventListener("message", (event) => {
  if (event.data === "take-over") self.skipWaiting();
  if (event.data !== "fill") return;
  filling ??= fill().finally(() => (filling = null));
  event.waitUntil(filling);
});
self.addEventListener("fetch", (event) => {
  const { method, url, mode, headers } = event.request;
  if (method !== "GET" || !url.startsWith(ROOT) || headers.has("range")) return;
  event.respondWith(mode === "navigate" ? page(event) : part(event));
});
