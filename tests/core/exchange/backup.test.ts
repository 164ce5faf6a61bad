import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readBackup, writeBackup } from '#core/exchange';
import { foldEntries, mergeEntries, stampOf, type JournalEntry } from '#core/journal';
import { anId, begun, phone, tablet, took, takenBack } from '../journal/entries';

const madeAtMs = Date.UTC(2026, 2, 9, 7, 30);
const made = '2026-03-09T07:30:00.000Z';

/** An entry of a later program, with whatever it likes in it. */
const unknownEntry = (number: number, body: object): JournalEntry =>
  ({
    ...body,
    id: anId(number),
    at: stampOf(madeAtMs, number),
    device: number % 2 === 0 ? tablet : phone,
    kind: 'moon-seen',
    v: 3,
  }) as unknown as JournalEntry;

const journal: readonly JournalEntry[] = [
  ...begun,
  took(10, '2026-03-02', 3),
  took(11, '2026-03-05', 5.5),
  takenBack(12, 11),
  unknownEntry(13, { phase: 'full', seen: [{ by: 'Wren', sure: true }], hours: 2.5, 7: null }),
];

const text = writeBackup(journal, madeAtMs);

const bodies = fc.dictionary(fc.string({ unit: 'binary' }), fc.jsonValue({ maxDepth: 3 }), {
  maxKeys: 4,
});
const journals = fc
  .array(bodies, { maxLength: 8 })
  .map((all) => all.map((body, index) => unknownEntry(index + 1, body)));

describe('a backup', () => {
  test('X24 is one JSON document with one entry on each line', () => {
    const lines = text.split('\n');
    expect(JSON.parse(text)).toMatchObject({
      format: 'morning-measure-notebook',
      version: 1,
      made,
      entryCount: 8,
    });
    const first = lines.indexOf('"entries": [') + 1;
    const entries = lines.slice(first, first + 8).map((line) => JSON.parse(line.replace(/,$/, '')));
    expect(entries).toEqual(mergeEntries(journal));
  });

  test('X24 reads back as every entry that was written, those not understood too', () => {
    expect(readBackup(text)).toEqual({ ok: true, value: { entries: journal, made } });
    fc.assert(
      fc.property(journals, (entries) => {
        const read = readBackup(writeBackup(entries, madeAtMs));
        // Through JSON: -0 has no JSON of its own and comes back as 0.
        const asWritten = JSON.parse(JSON.stringify(mergeEntries(entries)));
        expect(read).toEqual({ ok: true, value: { entries: asWritten, made } });
      }),
      { seed: 31, numRuns: 300 },
    );
  });

  test('X24 adds up to the same notebook', () => {
    const read = readBackup(text);
    expect(read.ok && foldEntries(read.value.entries)).toEqual(foldEntries(journal));
  });

  test('X27 brought in twice changes nothing the second time', () => {
    const read = readBackup(text);
    if (!read.ok) throw new Error(read.error.kind);
    const once = mergeEntries([], read.value.entries);
    expect(mergeEntries(once, read.value.entries)).toEqual(once);
    expect(mergeEntries(journal, read.value.entries)).toEqual(journal);
  });

  test('X27 writes an entry once that was handed in twice', () => {
    expect(writeBackup([...journal, ...journal].reverse(), madeAtMs)).toBe(text);
  });

  test('X24 opens with line breaks of another kind, a mark, or laid out anew', () => {
    const value = { entries: journal, made };
    for (const same of [
      text.replaceAll('\n', '\r\n'),
      `\ufeff${text}`,
      JSON.stringify(JSON.parse(text)),
      JSON.stringify(JSON.parse(text), null, 2),
    ]) {
      expect(readBackup(same)).toEqual({ ok: true, value });
    }
  });
});

describe('a backup that was changed', () => {
  /** Either refused, or read as the very same thing. */
  const isRefusedOrSame = (changed: string, original: ReturnType<typeof readBackup>): void => {
    const read = readBackup(changed);
    if (read.ok) expect(read).toEqual(original);
  };

  test('X25 in any one place is refused, or says the same', () => {
    const small = writeBackup(journal.slice(-2), madeAtMs);
    const original = readBackup(small);
    const others = [...'09-aFe"\\,: \n{}]\0é'];
    for (let at = 0; at < small.length; at += 1) {
      isRefusedOrSame(small.slice(0, at) + small.slice(at + 1), original);
      for (const other of others) {
        isRefusedOrSame(small.slice(0, at) + other + small.slice(at + 1), original);
        isRefusedOrSame(small.slice(0, at) + other + small.slice(at), original);
      }
    }
  });

  test('X25 by any one character of any journal is refused, or says the same', () => {
    fc.assert(
      fc.property(
        journals,
        fc.nat(),
        fc.string({ unit: 'binary', maxLength: 1 }),
        fc.boolean(),
        (entries, place, other, inserts) => {
          const whole = writeBackup(entries, madeAtMs);
          const at = place % whole.length;
          const changed = whole.slice(0, at) + other + whole.slice(inserts ? at : at + 1);
          isRefusedOrSame(changed, readBackup(whole));
        },
      ),
      { seed: 32, numRuns: 1000 },
    );
  });

  test('X25 inside an entry is called changed, and not made sense of', () => {
    expect(readBackup(text.replace('"Bean A"', '"Bean B"'))).toEqual({
      ok: false,
      error: { kind: 'checksum-mismatch' },
    });
    expect(readBackup(text.replace(made, '2025-03-09T07:30:00.000Z'))).toEqual({
      ok: false,
      error: { kind: 'checksum-mismatch' },
    });
  });

  test('X25 by being cut anywhere is told to be cut short', () => {
    const end = text.trimEnd().length;
    for (let length = 1; length < end; length += 1) {
      expect(readBackup(text.slice(0, length)), String(length)).toEqual({
        ok: false,
        error: { kind: 'not-json', position: length, isCutShort: true },
      });
    }
    expect(readBackup(text.slice(0, end))).toEqual(readBackup(text));
  });

  test('X25 a nought turned into minus nought is read as nought', () => {
    const zero = took(20, '2026-03-02', 0);
    const backup = writeBackup([zero], madeAtMs);
    expect(backup).toContain('"exact":0}');
    const read = readBackup(backup.replace('"exact":0}', '"exact":-0}'));
    expect(read).toEqual({ ok: true, value: { entries: [zero], made } });
    expect(read.ok && JSON.stringify(read.value.entries)).toContain('"exact":0}');
  });
});

describe('a file that is no backup', () => {
  const backup = (fields: object): string =>
    JSON.stringify({ ...(JSON.parse(text) as object), ...fields });

  test.each([
    ['', { kind: 'empty' }],
    ['\ufeff \n', { kind: 'empty' }],
    ['day,cm\n2026-03-02,3\n', { kind: 'not-json', position: 0, isCutShort: false }],
    ['[]', { kind: 'not-a-backup', field: 'format' }],
    ['null', { kind: 'not-a-backup', field: 'format' }],
    ['7', { kind: 'not-a-backup', field: 'format' }],
    ['{"format": "something-else"}', { kind: 'not-a-backup', field: 'format' }],
    [backup({ version: 2 }), { kind: 'newer-version', version: 2 }],
    [backup({ version: 0 }), { kind: 'not-a-backup', field: 'version' }],
    [backup({ version: '1' }), { kind: 'not-a-backup', field: 'version' }],
    [backup({ made: 'yesterday' }), { kind: 'not-a-backup', field: 'made' }],
    [backup({ made: '2026-13-09T07:30:00.000Z' }), { kind: 'not-a-backup', field: 'made' }],
    [backup({ entryCount: -1 }), { kind: 'not-a-backup', field: 'entryCount' }],
    [backup({ checksum: 1 }), { kind: 'not-a-backup', field: 'checksum' }],
    [backup({ entries: {} }), { kind: 'not-a-backup', field: 'entries' }],
    [backup({ entryCount: 9 }), { kind: 'wrong-count', expected: 9, found: 8 }],
    [backup({ entries: [] }), { kind: 'wrong-count', expected: 8, found: 0 }],
  ])('X26 %j is refused', (other, error) => {
    expect(readBackup(other)).toEqual({ ok: false, error });
  });

  test('X26 names the entry and the field that are damaged', () => {
    const damaged = { ...took(10, '2026-03-02', 3), day: '2026-02-30' } as unknown as JournalEntry;
    expect(readBackup(writeBackup([...begun, damaged], madeAtMs))).toMatchObject({
      ok: false,
      error: { kind: 'damaged-entry', index: 4, field: 'day' },
    });
    const stranger = { id: 'bean' } as unknown as JournalEntry;
    expect(readBackup(writeBackup([stranger], madeAtMs))).toMatchObject({
      ok: false,
      error: { kind: 'damaged-entry', index: 0 },
    });
  });

  test('X26 refuses one id for two entries that differ, and takes one entry twice for one', () => {
    const [first, second] = [took(10, '2026-03-02', 3), took(11, '2026-03-02', 4)];
    const double = writeBackup([first, second], madeAtMs).replace(second.id, first.id);
    expect(readBackup(double)).toEqual({ ok: false, error: { kind: 'checksum-mismatch' } });
    expect(readBackup(withChecksum([first, { ...second, id: first.id }]))).toEqual({
      ok: false,
      error: { kind: 'same-id-twice', id: first.id, earlier: 0, index: 1 },
    });
    expect(readBackup(withChecksum([first, first]))).toMatchObject({
      ok: true,
      value: { entries: [first] },
    });
  });

  test('X28 refuses nesting without end instead of breaking down', () => {
    const deep = `${'['.repeat(200_000)}${']'.repeat(200_000)}`;
    expect(readBackup(deep).ok).toBe(false);
    const inside = JSON.stringify({ ...JSON.parse(text), entryCount: 1, entries: ['X'] });
    const read = readBackup(inside.replace('"X"', deep));
    expect(read.ok).toBe(false);
  });

  test('X28 keeps hostile keys as plain data, and no object is changed by them', () => {
    const hostile = JSON.parse(
      '{"__proto__": {"polluted": true}, "constructor": {"prototype": {"polluted": true}}}',
    ) as object;
    const written = writeBackup([unknownEntry(1, {})], madeAtMs);
    const line = JSON.stringify(unknownEntry(1, {}));
    const entry = line.replace('{', `${JSON.stringify(hostile).slice(0, -1)},`);
    expect(written).toContain(line);
    const read = readBackup(withChecksum([JSON.parse(entry) as JournalEntry]));
    expect(read.ok && Object.hasOwn(read.value.entries[0]!, '__proto__')).toBe(true);
    expect(read.ok && JSON.stringify(read.value.entries[0])).toBe(entry);
    if (read.ok) foldEntries(mergeEntries(read.value.entries, journal));
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
    expect(readBackup(`{"__proto__": ${text}}`)).toEqual({
      ok: false,
      error: { kind: 'not-a-backup', field: 'format' },
    });
  });
});

/** A backup of entries just as they are given, repeats and all, with the checksum that fits. */
function withChecksum(entries: readonly JournalEntry[]): string {
  const lines = entries.map((entry) => JSON.stringify(entry));
  const units = [`1 ${made}`, ...lines.flatMap((line) => ['\n', line])].join('');
  const checksum = `crc32:${crc32(units)}`;
  const head = { format: 'morning-measure-notebook', version: 1, made };
  return `${JSON.stringify({ ...head, entryCount: entries.length, checksum }).slice(0, -1)},"entries":[${lines.join()}]}`;
}

/** CRC-32 bit by bit, straight from its definition: a second way to the same number. */
function crc32(text: string): string {
  let crc = 0xffffffff;
  for (let at = 0; at < 2 * text.length; at += 1) {
    crc ^= (text.charCodeAt(at >> 1) >> (8 * (at % 2))) & 0xff;
    for (let bit = 0; bit < 8; bit += 1) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return (~crc >>> 0).toString(16).padStart(8, '0');
}
