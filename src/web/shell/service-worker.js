// Runs beside the page in the browser and answers for the page's own files when there is no line. `KEPT_FILES` and `KEPT_AS` are
// put before it when the page is built: the files, and a name that changes when any of them does.

self.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(KEPT_AS)
      .then((cache) => cache.addAll(KEPT_FILES))
      .then(() => self.skipWaiting()),
  );
});

// A tab that was opened before a new page came still asks for rooms of the old one: the page before this one is kept too.
self.addEventListener('activate', (event) => {
  const letGo = async () => {
    const ours = (await caches.keys()).filter((name) => name.startsWith('tautwork-shell-'));
    const old = ours.filter((name) => name !== KEPT_AS).slice(0, -1);
    await Promise.all(old.map((name) => caches.delete(name)));
    await self.clients.claim();
  };
  event.waitUntil(letGo());
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  // What the shop says is never answered from here: its figures would be old, and look as if they were not.
  if (request.method !== 'GET' || origin !== self.location.origin || pathname.startsWith('/api/')) return;
  if (request.mode === 'navigate') event.respondWith(page(request));
  else if (pathname.startsWith('/assets/')) event.respondWith(file(request));
});

/** As the server has it now; without a line as it was kept. */
const page = async (request) => {
  try {
    return await fetch(request);
  } catch {
    return (await caches.match('/index.html')) ?? Response.error();
  }
};

/** Files under `assets` bear a hash of their content in the name: what was kept is what the server has. */
const file = async (request) => (await caches.match(request)) ?? fetch(request);
