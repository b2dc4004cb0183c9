// Keeps all files of the page of one version, so that it opens without a network. Of the two cores the one that this
// browser loads is kept alone.

const VERSION = "@version@";
const FILES = ["@files@"];
const OTHER_CORE = HAS_GARBAGE_COLLECTION ? "pegbed-core.js" : "pegbed.wasm";
const CACHE = `pegbed ${VERSION}`;

self.addEventListener("install", (event) => {
  event.waitUntil(
    caches
      .open(CACHE)
      .then((cache) =>
        cache.addAll(
          FILES.filter((file) => file !== OTHER_CORE).map((file) => new Request(file, { cache: "reload" })),
        ),
      ),
  );
});

self.addEventListener("activate", (event) => {
  const old = (name) => name.startsWith("pegbed ") && name !== CACHE;
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter(old).map((name) => caches.delete(name))))
      .then(() => self.clients.claim()),
  );
});

self.addEventListener("fetch", (event) => {
  if (event.request.method !== "GET") return;
  const wanted = event.request.mode === "navigate" ? "index.html" : event.request;
  event.respondWith(
    caches
      .open(CACHE)
      .then((cache) => cache.match(wanted, { ignoreSearch: true }))
      .then((kept) => kept ?? fetch(event.request)),
  );
});
