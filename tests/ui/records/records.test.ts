import { describe, expect, test } from 'vitest';
import { civilDay } from '#core/calendar';
import { foldEntries } from '#core/journal';
import { backupFileName, tableFileName } from '../../../src/lib/ui/records/file-names';
import { linesSinceCopy, readLastCopy, rememberCopy } from '../../../src/lib/ui/records/last-copy';
import { countLogLines } from '../../../src/lib/ui/records/log-line-count';
import { Keeping } from '../../../src/lib/ui/records/keeping.svelte';
import {
  damagedWords,
  momentWords,
  sizeWords,
} from '../../../src/lib/ui/records-words/records-words';
import { begun, heights, took } from '../../core/journal/entries';
import { memoryOf } from './a-notebook';

const monday = civilDay('2026-03-09');

describe('files', () => {
  test('carry the day they were made in their names', () => {
    expect(backupFileName(monday)).toBe('morning-measure-2026-03-09.json');
    expect(tableFileName(null, monday)).toBe('morning-measure-logs-2026-03-09.csv');
    expect(tableFileName('Our seedling', monday)).toBe('our-seedling-2026-03-09.csv');
  });

  test('have names that every system can keep, whatever the title is', () => {
    expect(tableFileName('Größe: a/b\\c?', monday)).toBe('große-a-b-c-2026-03-09.csv');
    expect(tableFileName('../..', monday)).toBe('morning-measure-logs-2026-03-09.csv');
    expect(tableFileName('x'.repeat(80), monday)).toBe(`${'x'.repeat(40)}-2026-03-09.csv`);
  });
});

describe('the last copy', () => {
  test('is remembered by the device, with how many lines came since', () => {
    const memory = memoryOf();
    expect(readLastCopy(memory)).toBeNull();
    rememberCopy(memory, begun, 1000);
    const copy = readLastCopy(memory)!;
    expect(copy).toMatchObject({ atMs: 1000, lineCount: 4 });
    expect(linesSinceCopy(copy, begun)).toBe(0);
    expect(linesSinceCopy(copy, [...begun, took(5, '2026-03-02', 3)])).toBe(1);
  });

  test('of another notebook is no copy of this one', () => {
    const memory = memoryOf();
    rememberCopy(memory, begun, 1000);
    expect(linesSinceCopy(readLastCopy(memory)!, [took(5, '2026-03-02', 3)])).toBeNull();
  });

  test.each(['nonsense', '[]', 'null', '{"atMs":"x"}', '{"atMs":1}'])(
    'that reads %s is none',
    (kept) => {
      const memory = memoryOf();
      memory.write('last-copy', kept);
      expect(readLastCopy(memory)).toBeNull();
    },
  );
});

test('the lines of a log are counted for its investigation, crossed-out ones among them', () => {
  const notebook = foldEntries([...begun, took(5, '2026-03-02', 3), took(6, '2026-03-03', 4)]);
  expect(countLogLines(notebook)).toEqual(new Map([[heights, 2]]));
});

describe('keeping', () => {
  test('asks nobody anything when it only looks', async () => {
    let asked = 0;
    const persist = () => Promise.resolve(++asked > 0);
    const keeping = new Keeping({ persist, persisted: () => Promise.resolve(false) });
    await keeping.look();
    expect([keeping.persistence, asked]).toEqual(['not-asked', 0]);
    await keeping.ask();
    expect([keeping.persistence, asked]).toEqual(['granted', 1]);
  });

  test('takes what was granted before, and knows when nobody can be asked', async () => {
    const granted = new Keeping({
      persist: () => Promise.resolve(true),
      persisted: () => Promise.resolve(true),
    });
    await granted.look();
    expect(granted.persistence).toBe('granted');
    const nothing = new Keeping({});
    await nothing.look();
    expect([nothing.persistence, nothing.room]).toEqual(['not-available', null]);
  });
});

describe('the words', () => {
  test.each([
    [0, '0 bytes'],
    [999, '999 bytes'],
    [4300, '4.3 kB'],
    [119_000, '119 kB'],
    [4_300_000, '4.3 MB'],
    [100_000_000, '100 MB'],
    [11_000_000_000, '11 GB'],
  ])('%i bytes are %s', (bytes, words) => expect(sizeWords(bytes)).toBe(words));

  test('a moment is told by the family’s clock', () => {
    const moment = Date.UTC(2026, 2, 9, 23, 30);
    expect(momentWords(moment, 'UTC')).toBe('Monday 9 March 2026 at 23:30');
    expect(momentWords(moment, 'Asia/Tokyo')).toBe('Tuesday 10 March 2026 at 08:30');
  });

  test('a damaged record says which it is, as far as it still can', () => {
    const record = { kind: 'reading-taken', day: '2026-03-02' };
    expect(damagedWords({ record, field: 'measured.exact', expected: 'number' })).toBe(
      'reading taken, 2026-03-02: its “measured.exact” should be number.',
    );
    const missing = { record, field: 'measured.unit', expected: '"unit"' };
    expect(damagedWords(missing)).toBe(
      'reading taken, 2026-03-02: its “measured.unit” is missing.',
    );
    const strange = { record, field: 'id', expected: 'not an id' };
    expect(damagedWords(strange)).toBe('reading taken, 2026-03-02: its “id” is not an id.');
    for (const nothing of [null, 3, 'text', {}, { kind: 5 }]) {
      expect(damagedWords({ record: nothing, field: '', expected: 'Object' })).toBe(
        'a line that does not say what it is: nothing in it can be read.',
      );
    }
  });
});
