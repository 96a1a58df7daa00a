// Service worker of the site: its pages answer without a network once they were loaded.
// The build puts one line above this: `const kept = { version, files }`.

const scope = new URL(self.registration.scope);
const ours = `esu-limits ${scope.pathname} `;
const name = ours + kept.version;
const patience = 4000;

self.addEventListener('install', (event) => {
  self.skipWaiting();
  event.waitUntil(keepFirstFiles());
});

self.addEventListener('activate', (event) => {
  event.waitUntil(dropOldCaches().then(() => self.clients.claim()));
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || !request.url.startsWith(scope.href)) return;
  event.respondWith(answer(request));
});

async function keepFirstFiles() {
  const cache = await caches.open(name);
  await Promise.all(
    kept.files.map(async (file) => {
      const address = new URL(file, scope).href;
      // A file with a hash in its name is the same in every build.
      const before = isFixed(address) ? await caches.match(address) : undefined;
      const response = before ?? (await fetch(address, { cache: 'no-cache' }));
      if (!response.ok) throw new Error(`${address}: ${response.status}`);
      await cache.put(address, await withoutRedirect(response));
    }),
  );
}

async function dropOldCaches() {
  const names = await caches.keys();
  await Promise.all(names.filter((other) => other.startsWith(ours) && other !== name).map((old) => caches.delete(old)));
}

/** Files that never change come from the cache; pages from the network, and from the cache where it fails or is slow. */
async function answer(request) {
  const cache = await caches.open(name);
  const address = placeOf(request.url);
  const copy = await cache.match(address);
  if (copy !== undefined && isFixed(address)) return copy;
  const fresh = fromNetwork(request, cache, address);
  if (copy === undefined) return fresh;
  return Promise.race([fresh.catch(() => copy), later(copy)]);
}

async function fromNetwork(request, cache, address) {
  const response = await fetch(request);
  if (response.ok) await cache.put(address, await withoutRedirect(response.clone()));
  return response;
}

function isFixed(address) {
  return address.startsWith(new URL('assets/', scope).href);
}

/** Address under which a file is kept: a folder is its index, and what is asked of a page changes no page. */
function placeOf(url) {
  const { origin, pathname } = new URL(url);
  return origin + (pathname.endsWith('/') ? `${pathname}index.html` : pathname);
}

/** A browser refuses a redirected answer for a page, however good its content. */
async function withoutRedirect(response) {
  return response.redirected ? new Response(await response.blob(), { headers: response.headers }) : response;
}

function later(copy) {
  return new Promise((resolve) => setTimeout(() => resolve(copy), patience));
}
