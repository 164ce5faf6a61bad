import { addDays, civilDay } from '#core/calendar';
import { foldEntries, newId, stampOf, type JournalEntry, type SpecimenId } from '#core/journal';
import { seriesOf } from '#core/series';
import { changesBetween, trendOf } from '#core/growth';
import { medianMs } from './median-ms';

/** A journal of so many entries: readings in turn for thirty plants, one in twenty corrected. */
export function bigJournal(entryCount: number, lastDay = '2026-03-02'): JournalEntry[] {
  let made = 0;
  const last = civilDay(lastDay);
  const dayOf = (index: number) => addDays(last, -Math.floor((entryCount - index) / 30));
  const id = () => {
    made += 1;
    const bytes = Uint8Array.from({ length: 10 }, (_, at) => (made >> ((at % 4) * 8)) & 0xff);
    return newId(1_700_000_000_000 + made, bytes) as string;
  };
  const device = id();
  const investigation = id();
  const specimens = Array.from({ length: 30 }, id);
  const entries: JournalEntry[] = [];
  const write = (draft: object): string => {
    const entry = { id: id(), at: stampOf(1_700_000_000_000 + made), device, author: null, v: 1 };
    entries.push({ ...entry, ...draft } as unknown as JournalEntry);
    return entry.id;
  };
  write({ kind: 'notebook-begun', title: 'Measured speed' });
  write({
    ...{ kind: 'investigation-begun', investigation, title: 'Many plants', question: 'How fast?' },
    ...{ quantity: 'plant-height', unit: 'cm', mark: '1 mm', kinds: [], weekdays: [1, 2, 3, 4, 5] },
    ...{ where: 'soil to tip', tool: 'ruler', when: 'morning', origin: 'ours' },
  });
  specimens.forEach((specimen, index) =>
    write({
      ...{ kind: 'specimen-added', specimen, investigation, name: `Plant ${index + 1}` },
      startedOn: dayOf(0),
    }),
  );
  while (entries.length < entryCount) {
    const index = entries.length;
    const day = dayOf(index);
    const tenths = 10 + ((index * 7919) % 4000);
    const text = `${Math.floor(tenths / 10)}.${tenths % 10}`;
    const measured = { text, unit: 'cm', mark: '1 mm', exact: tenths * 1_000_000 };
    const specimen = specimens[index % 30];
    const reading = write({ kind: 'reading-taken', specimen, day, measured });
    if (index % 20 === 0 && entries.length < entryCount) {
      write({ kind: 'reading-corrected', reading, to: { day, measured } });
    }
  }
  return entries;
}

/** Milliseconds to fold journals of several sizes, and for the growth of a thousand readings. */
export function measureCore(): { name: string; ms: number }[] {
  const folds = [1_000, 10_000, 100_000].map((entryCount) => {
    const entries = bigJournal(entryCount);
    return { name: `fold of ${entryCount} entries`, ms: medianMs(() => foldEntries(entries)) };
  });
  const points = Array.from({ length: 1_000 }, (_, index) => ({
    day: addDays(civilDay('2024-01-01'), index),
    exact: 5_000_000 * index + ((index * 7919) % 101) * 1_000_000,
    unit: 'cm' as const,
    mark: '1 mm' as const,
  }));
  const notebook = foldEntries(bigJournal(10_000));
  const specimen = [...notebook.specimens.keys()][0] as SpecimenId;
  return [
    ...folds,
    {
      name: 'series of one log among 10000 entries',
      ms: medianMs(() => seriesOf(notebook, specimen, civilDay('2026-03-02'))),
    },
    { name: 'changes between 1000 readings', ms: medianMs(() => changesBetween(points)) },
    { name: 'trend of 1000 readings, both lines', ms: medianMs(() => trendOf(points)) },
  ];
}
