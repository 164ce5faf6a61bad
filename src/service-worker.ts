/// <reference lib="webworker" />
/// <reference types="@sveltejs/kit" />
import { build, files, prerendered, version } from '$service-worker';

/**
 * Keeps the whole program on the device, so that the notebook opens with no network at all.
 * It holds program files only: what a family writes is in the browser's database, never here.
 */
const worker = globalThis as unknown as ServiceWorkerGlobalScope;
const shelf = `program-${version}`;
const program = [...build, ...files, ...prerendered];

worker.addEventListener('install', (event) => {
  event.waitUntil(caches.open(shelf).then((cache) => cache.addAll(program)));
});

worker.addEventListener('activate', (event) => {
  event.waitUntil(forgetOldShelves());
});

worker.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== worker.location.origin) return;
  event.respondWith(answer(request));
});

async function forgetOldShelves(): Promise<void> {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name !== shelf).map((name) => caches.delete(name)));
}

/** A file of this version from the shelf; a page from the network first, so that it is renewed. */
async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(shelf);
  const { pathname } = new URL(request.url);
  if (build.includes(pathname)) {
    const kept = await cache.match(pathname);
    if (kept) return kept;
  }
  try {
    return await fetch(request);
  } catch (offline) {
    const kept = (await cache.match(pathname)) ?? (await cache.match(withoutSlash(pathname)));
    if (kept) return kept;
    throw offline;
  }
}

const withoutSlash = (path: string): string => (path.length > 1 ? path.replace(/\/$/, '') : path);
