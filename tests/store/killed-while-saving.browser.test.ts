import { describe, expect, it } from 'vitest';
import { kept } from './journal-store-contract';
import { newIndexedDbJournal } from './open-journal';
import { noteEntries } from './sample-entries';

const program = new URL('./append-until-killed.ts', import.meta.url).href;

describe('a journal whose page is gone without warning', () => {
  it.each([
    ['a page', startPage],
    ['a worker', startWorker],
  ])('S22 has everything that %s was told is kept, and no half of a call', async (_, start) => {
    const lost: number[] = [];
    for (let round = 0; round < 10; round += 1) {
      const journal = newIndexedDbJournal();
      let saidKept = 0;
      const kill = await start(journal.databaseName, (keptUpTo) => (saidKept = keptUpTo));
      await until(() => saidKept > 0);
      await new Promise((resolve) => setTimeout(resolve, 20 + round * 17));
      kill();
      const { entries, damaged } = await kept(await journal.open());
      // Read after the journal was opened again: a last word may have been on its way.
      expect(entries.length).toBeGreaterThanOrEqual(saidKept);
      expect(entries).toEqual(noteEntries(1, entries.length));
      expect(entries.length % 10).toBe(0);
      expect(damaged).toEqual([]);
      lost.push(entries.length - saidKept);
      await journal.remove();
    }
    console.info('S22 kept beyond what was said, in each round:', lost.join(', '));
    expect(Math.max(...lost)).toBeLessThanOrEqual(10);
  });
});

type Start = (databaseName: string, onKept: (upTo: number) => void) => Promise<() => void>;

async function startPage(...[databaseName, onKept]: Parameters<Start>): ReturnType<Start> {
  const frame = document.createElement('iframe');
  frame.name = databaseName;
  frame.srcdoc = `<script type="module" src="${program}"></script>`;
  const hear = (event: MessageEvent): void => onKept(readReport(event.data));
  window.addEventListener('message', hear);
  document.body.append(frame);
  return () => {
    frame.remove();
    window.removeEventListener('message', hear);
  };
}

async function startWorker(...[databaseName, onKept]: Parameters<Start>): ReturnType<Start> {
  const worker = new Worker(program, { type: 'module', name: databaseName });
  worker.addEventListener('message', (event) => onKept(readReport(event.data)));
  return () => worker.terminate();
}

function readReport(report: { readonly keptUpTo?: number; readonly error?: unknown }): number {
  if (report.keptUpTo === undefined) throw new Error(JSON.stringify(report));
  return report.keptUpTo;
}

async function until(isSo: () => boolean): Promise<void> {
  while (!isSo()) await new Promise((resolve) => setTimeout(resolve, 5));
}
