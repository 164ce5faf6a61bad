/**
 * Measures speed and weight: sizes, counts and ratios of one run on one machine, beside their
 * budgets. Nothing here is a test, because another machine is slower or faster. Needs a build.
 */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';
import { routeWeights } from './route-weights.mjs';
import { placeAMark } from './place-a-mark.mjs';
import { saveOneReading } from './save-one-reading.mjs';

process.chdir(fileURLToPath(new URL('../..', import.meta.url)));
if (!existsSync('build/handler.js')) {
  console.error('Build first: npm run build');
  process.exit(1);
}

const { module } = await runnerImport(fileURLToPath(new URL('./big-journal.ts', import.meta.url)), {
  configFile: false,
});
const ms = (number) => `${number.toFixed(1)} ms`;
const line = (name, value, note = '') =>
  console.log(`${name.padEnd(46)}${value.padStart(12)}  ${note}`);

console.log('\nCore (median of 7)');
const core = module.measureCore();
for (const { name, ms: took } of core) line(name, ms(took));
line('fold: 10 times the entries take', `${(core[1].ms / core[0].ms).toFixed(1)} times`);
line('fold: 10 times again', `${(core[2].ms / core[1].ms).toFixed(1)} times`);

console.log('\nSaving one reading with 10000 entries present (7 readings, in Chromium)');
// The journal ends the day before, so that today's reading is still to be written.
const daysBefore = new Date(Date.now() - 2 * 86_400_000).toISOString().slice(0, 10);
const saved = await saveOneReading(module.bigJournal(10_000, daysBefore));
line('press to durable and on screen, median', ms(saved.medianMs), 'budget 100 ms');
line('the slowest', ms(saved.slowestMs));

console.log('\nLooking at a drawing (median of 25)');
const { module: looks } = await runnerImport(
  fileURLToPath(new URL('./look-speed.ts', import.meta.url)),
  { configFile: false },
);
for (const { name, ms: took } of looks.measureLooks()) line(name, ms(took), 'budget 5 ms');

console.log('\nPlacing a mark on the drawing board, Chromium slowed six times');
console.log('(medians of 7: script + style, layout and paint of its frame; one frame is 16.7 ms)');
for (const { board, way, scriptMs, frameMs, waitedMs } of await placeAMark()) {
  const parts = `${ms(scriptMs)} + ${ms(frameMs)}, on the screen after ${ms(waitedMs)}`;
  line(`${board}, ${way}`, ms(scriptMs + frameMs), parts);
}

console.log('\nScript of each route, gzipped');
for (const { route, kb, budgetKb } of routeWeights()) {
  line(route, `${kb.toFixed(1)} KB`, `budget ${budgetKb} KB${kb > budgetKb ? '  OVER' : ''}`);
}
