// Keeps a whole copy of the app, so that it opens and computes without a network. The build fills in the list.
const EDITION = '__EDITION__';
const FILES = ['__FILES__'];
const SHELF = `pitwright-${EDITION}`;

self.addEventListener('install', (event) => {
  event.waitUntil(caches.open(SHELF).then((shelf) => shelf.addAll(FILES)));
});

// A new edition waits until the page asks for it: an open page must find the files it was built with.
self.addEventListener('message', (event) => {
  if (event.data === 'take-over') self.skipWaiting();
});

self.addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) =>
        Promise.all(
          names.filter((n) => n.startsWith('pitwright-') && n !== SHELF).map((n) => caches.delete(n)),
        ),
      )
      .then(() => self.clients.claim()),
  );
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== self.location.origin || url.pathname.startsWith('/api/'))
    return;
  // The app's own addresses are no files: they all open its one page.
  const isPage = request.mode === 'navigate' && !FILES.includes(url.pathname);
  const address = isPage ? '/' : url.pathname;
  event.respondWith(
    caches
      .open(SHELF)
      .then((shelf) => shelf.match(address, { ignoreVary: true }))
      .then((kept) => kept ?? fetch(request)),
  );
});
