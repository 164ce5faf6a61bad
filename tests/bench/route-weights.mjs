import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';

const client = '.svelte-kit/output/client/';
const budgets = { '/today': 75 };
const anyRoute = 160;

/**
 * The script each route needs before anybody touches it, gzipped, in KB of 1024 bytes: the frame,
 * the layout, the page, and everything they import (not what they load later on).
 */
export function routeWeights() {
  const manifest = JSON.parse(readFileSync(`${client}.vite/manifest.json`, 'utf8'));
  const app = readFileSync('.svelte-kit/generated/client-optimized/app.js', 'utf8');
  const dictionary = [...app.matchAll(/"(\/[^"]*)": \[~?(\d+)/g)];
  const keys = Object.keys(manifest);
  const frame = keys.filter((key) => /client-optimized\/app\.js$|client\/entry\.js$/.test(key));
  const node = (number) => keys.find((key) => key.endsWith(`client-optimized/nodes/${number}.js`));
  return dictionary.map(([, route, number]) => {
    const files = new Set();
    for (const key of [...frame, node(0), node(number)]) collect(manifest, key, files);
    const bytes = [...files].reduce((sum, file) => sum + gzippedBytes(file), 0);
    const budgetKb = budgets[route] ?? anyRoute;
    return { route, kb: bytes / 1024, budgetKb };
  });
}

function collect(manifest, key, files) {
  const chunk = manifest[key];
  if (!chunk || files.has(chunk.file)) return;
  if (chunk.file.endsWith('.js')) files.add(chunk.file);
  for (const imported of chunk.imports ?? []) collect(manifest, imported, files);
}

const gzippedBytes = (file) => gzipSync(readFileSync(client + file)).length;
