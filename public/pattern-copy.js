/*
 * Keeps the last read text of one tester's pattern page for when there is no connection. Its scope is that page alone, and
 * so is its copy. The page asks for it; a page that is no longer theirs removes it.
 */
const PAGE = new URL(self.registration.scope).pathname;
const COPY = `sizewright-pattern ${PAGE}`;
const MOST_PARTS = 200;
const ANY = { ignoreSearch: true, ignoreVary: true };

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
self.addEventListener("message", (event) => {
  if (event.data === "keep") event.waitUntil(keep());
});
self.addEventListener("fetch", (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== "GET" || origin !== self.location.origin) return;
  if (request.mode === "navigate") {
    if (pathname === PAGE) event.respondWith(page(request));
  } else if (pathname.startsWith("/_next/static/")) event.respondWith(part(request));
});

async function page(request) {
  try {
    const answer = await fetch(request);
    if (answer.status === 404) await caches.delete(COPY);
    return answer.status < 500 ? answer : ((await copyOf(PAGE)) ?? answer);
  } catch {
    return (await copyOf(PAGE)) ?? Response.error();
  }
}

/** A script, a style sheet or a font; their names change with their content. */
async function part(request) {
  const copy = await copyOf(request);
  if (copy !== undefined) return copy;
  const answer = await fetch(request);
  if (answer.ok && (await caches.has(COPY))) await (await caches.open(COPY)).put(request, answer.clone());
  return answer;
}

async function copyOf(request) {
  return (await caches.has(COPY)) ? (await caches.open(COPY)).match(request, ANY) : undefined;
}

async function keep() {
  try {
    const answer = await fetch(PAGE, { headers: { Accept: "text/html" } });
    if (answer.status >= 500) return;
    if (!answer.ok || answer.redirected) {
      await caches.delete(COPY);
      return;
    }
    const text = await answer.clone().text();
    // What later versions of the page no longer use goes all at once.
    if ((await (await caches.open(COPY)).keys()).length > MOST_PARTS) await caches.delete(COPY);
    const copy = await caches.open(COPY);
    await copy.put(PAGE, answer);
    const parts = new Set(text.match(/\/_next\/static\/[\w./~%-]+\.(?:js|css|woff2)/g));
    for (const address of parts) if ((await copy.match(address, ANY)) === undefined) await copy.add(address);
  } catch {
    // No connection: the copy stays as it is.
  }
}
