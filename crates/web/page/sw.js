// Keeps the app on the device and gives it with or without a signal. `cargo xtask app` fills in the list of files.
//
// A version is kept whole or not at all: every file is held to its check sum. A new version waits until a page says
// `use-now`, or until no page is open; then the files of the old one go, unless another window still runs from them.

/** Every file of this version with its check sum. */
const FILES = new Map(Object.entries('@FILES@'));
/** The folder that the app stands in. */
const SCOPE = new URL(self.registration.scope);
/** The caches of this app; another may stand in another folder of the same host. */
const CACHES = `evenswath ${SCOPE.pathname} `;
const CACHE = `${CACHES}@VERSION@`;
/** The app's page. Asked for by its folder: some hosts send those who ask for `index.html` there. */
const PAGE = 'index.html';
/** Names with a check sum in them, of this or another version: what they hold never changes. */
const HASHED = /[-.][0-9a-f]{16}\.[a-z0-9]+$/;

self.addEventListener('install', (event) => event.waitUntil(install()));
self.addEventListener('activate', (event) => event.waitUntil(activate()));
self.addEventListener('message', (event) => {
  if (event.data === 'use-now') event.waitUntil(self.skipWaiting());
});
self.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== SCOPE.origin || !url.pathname.startsWith(SCOPE.pathname)) return;
  const path = url.pathname.slice(SCOPE.pathname.length);
  if (path === 'api' || path.startsWith('api/')) return;
  if (path === '' || FILES.has(path) || HASHED.test(path)) event.respondWith(give(path || PAGE, request));
  else if (request.mode === 'navigate' && !path.split('/').at(-1).includes('.')) event.respondWith(lead(path, url));
});

const address = (path) => new URL(path === PAGE ? './' : path, SCOPE).href;

async function install() {
  try {
    const answers = await Promise.all([...FILES].map(async ([path, sum]) => [address(path), await whole(path, sum)]));
    const cache = await caches.open(CACHE);
    await Promise.all(answers.map(([url, answer]) => cache.put(url, answer)));
  } catch (error) {
    await caches.delete(CACHE);
    throw error;
  }
}

/** The file as it was built, or an error: not half of it, not another version's, not a sign-in page of the network. */
async function whole(path, integrity) {
  const ask = (cache) => fetch(address(path), { cache, integrity, credentials: 'same-origin' });
  // What the page has just loaded is taken from there; where that is not the right one, the host is asked again.
  const answer = await ask(HASHED.test(path) ? 'default' : 'no-cache').catch(() => ask('reload'));
  if (!answer.ok) throw new Error(`${path}: ${answer.status}`);
  // A page that came by another address may not be given to somebody who asks for this one.
  return answer.redirected ? new Response(await answer.blob(), { headers: answer.headers }) : answer;
}

async function activate() {
  const windows = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  const ours = windows.filter((client) => client.url.startsWith(SCOPE.href));
  if (ours.length <= 1) {
    const old = (await caches.keys()).filter((name) => name.startsWith(CACHES) && name !== CACHE);
    await Promise.all(old.map((name) => caches.delete(name)));
  }
  await self.clients.claim();
}

async function give(path, request) {
  const exactly = { ignoreVary: true };
  const cache = await caches.open(CACHE);
  const kept = await cache.match(address(path), exactly) ?? (HASHED.test(path) ? await caches.match(address(path), exactly) : undefined);
  return kept ?? fetch(request);
}

/** Addresses within the app stand behind `#`, so that they work on every host; others lead there. */
function lead(path, url) {
  return Response.redirect(new URL(`./#/${path}${url.search}`, SCOPE).href, 302);
}
