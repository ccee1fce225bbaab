/** Keeps the whole app on the device, so that it opens without a network. The build puts in the list of files. */

const FILES = __FILES__;
const CACHE = 'loamdeck-__VERSION__';

self.addEventListener('install', (event) => {
  // Takes over only once every tab with the version before is closed: an update never interrupts.
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(FILES)));
});

self.addEventListener('activate', (event) => {
  const old = (name) => name.startsWith('loamdeck-') && name !== CACHE;
  event.waitUntil(caches.keys().then((names) => Promise.all(names.filter(old).map((name) => caches.delete(name)))));
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
  // What was kept is the file itself: no header of a request makes it another one.
  const wanted = request.mode === 'navigate' ? 'index.html' : request;
  event.respondWith(
    caches
      .open(CACHE)
      .then((cache) => cache.match(wanted, { ignoreSearch: true, ignoreVary: true }))
      .then((kept) => kept ?? fetch(request)),
  );
});
