import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { civilDay } from '#core/calendar';
import {
  importDrafts,
  previewImport,
  previewImportInSlices,
  type ImportMapping,
  type PreviewRow,
} from '#core/exchange';
import { decodeEntry, foldEntries, type EntryId, type JournalEntry } from '#core/journal';
import { anId, bean, begun, took, takenBack, written, read } from '../journal/entries';
import { table } from './files';

const preview = (
  text: string,
  change: Partial<ImportMapping> = {},
  entries: readonly JournalEntry[] = begun,
) => {
  const { rows, mapping } = table(text);
  const existing = foldEntries(entries).logBySpecimen.get(bean) ?? null;
  return previewImport(rows, { ...mapping, ...change }, existing);
};

const outcomes = (...given: Parameters<typeof preview>) =>
  preview(...given)
    .rows.slice(1)
    .map(({ outcome }) => outcome);
const whats = (...given: Parameters<typeof preview>) =>
  preview(...given)
    .rows.slice(1)
    .map(({ what }) => what);
const whys = (...given: Parameters<typeof preview>) =>
  preview(...given)
    .rows.slice(1)
    .map(({ why }) => why);

/** The journal after a table was brought in, as the running notebook would write it. */
const broughtIn = (entries: readonly JournalEntry[], text: string): readonly JournalEntry[] => [
  ...entries,
  ...importDrafts(preview(text, {}, entries), bean).map((draft, index) =>
    written(1000 + entries.length + index, draft),
  ),
];

describe('the preview of a table', () => {
  test('X16 keeps number, nought, blank and each state apart', () => {
    const text = `day,rain_mm
2026-03-01,0
2026-03-02,
2026-03-03,T
2026-03-04,missed
2026-03-05,M
2026-03-06,not up yet
2026-03-07,no sun
2026-03-08,lost
2026-03-09,1.5 mm
2026-03-10,½ in
`;
    expect(whats(text).map((what) => what?.kind === 'state' && what.state)).toEqual([
      false,
      'missed',
      'trace',
      'missed',
      'missed',
      'not-up-yet',
      'no-sun',
      'lost',
      false,
      false,
    ]);
    const exact = whats(text).map((what) => what?.kind === 'reading' && what.measured.exact);
    expect([exact[0], exact[8], exact[9]]).toEqual([0, 1_500_000, 12_700_000]);
  });

  test('X16 a blank may be passed over, and nought may mean not up yet, where so said', () => {
    const text = 'day,height cm\n2026-03-02,\n2026-03-03,0\n';
    expect(outcomes(text)).toEqual(['state', 'reading']);
    expect(outcomes(text, { blankMeans: 'nothing' })).toEqual(['passed-over', 'reading']);
    expect(whats(text, { zeroMeans: 'not-up-yet' })[1]).toEqual({
      kind: 'state',
      day: '2026-03-03',
      state: 'not-up-yet',
    });
  });

  test('X16 a state column wins over an empty number, and contradicts a number', () => {
    const text = `day,state,cm,note
2026-03-02,not up yet,,cold week
2026-03-03,missed,4,
2026-03-04,number,5,
2026-03-05,asleep,,
2026-03-06,number,,
`;
    expect(whats(text)[0]).toEqual({
      kind: 'state',
      day: '2026-03-02',
      state: 'not-up-yet',
      why: 'cold week',
    });
    expect(whys(text).slice(1)).toMatchObject([
      { kind: 'state-beside-number', read: '4', state: 'missed' },
      null,
      { kind: 'state', read: 'asleep' },
      { kind: 'number', read: '', error: { kind: 'empty' } },
    ]);
  });

  test('X15 what cannot be read for sure is refused with its reason, and nothing else is', () => {
    const text = `day,cm
3/4/2026,5
2026-02-30,5
Total,5
2026-03-02,-
2026-03-02,-3
2026-03-02,abc
2026-03-02,3.1415
2026-03-02,"1,234"
2026-03-02,3 kg
,5
3/4/26,5
2026-03-02,5
`;
    expect(whys(text)).toMatchObject([
      {
        kind: 'day',
        error: { kind: 'ambiguous-order', dayFirst: '2026-04-03', monthFirst: '2026-03-04' },
      },
      { kind: 'day', error: { kind: 'no-such-day' } },
      { kind: 'day', read: 'Total', error: { kind: 'not-a-day' } },
      { kind: 'state', read: '-' },
      { kind: 'number', error: { kind: 'negative' } },
      { kind: 'state', read: 'abc' },
      { kind: 'number', error: { kind: 'off-every-mark' } },
      { kind: 'number', error: { kind: 'ambiguous' } },
      { kind: 'number', error: { kind: 'unknown-unit' } },
      { kind: 'no-day' },
      { kind: 'day', error: { kind: 'two-digit-year' } },
      null,
    ]);
    const { countByOutcome, rows } = preview(text);
    expect(countByOutcome).toMatchObject({ reading: 1, refused: 11, 'passed-over': 1 });
    expect(rows.map(({ row }) => row)).toEqual(rows.map((_, index) => index + 1));
  });

  test('X15 an order once given reads the days by it', () => {
    const days = (order: 'day-first' | 'month-first') =>
      whats('day,cm\n3/4/2026,5\n', { days: { as: 'date', order } })[0];
    expect(days('day-first')).toMatchObject({ day: '2026-04-03' });
    expect(days('month-first')).toMatchObject({ day: '2026-03-04' });
  });

  test('X15 without a unit a number is refused', () => {
    expect(whys('day,height\n2026-03-02,5\n')).toEqual([{ kind: 'no-unit' }]);
    expect(outcomes('day,height\n2026-03-02,5\n', { unit: 'cm' })).toEqual(['reading']);
    expect(whys('day,height,unit\n2026-03-02,5,kg\n2026-03-03,5,cm\n')).toEqual([
      { kind: 'unit', read: 'kg' },
      null,
    ]);
  });

  test('X20 a row cut at a decimal comma, or one that lacks a cell that counts, is refused', () => {
    const text = 'day,cm\n2026-03-02,12,5\n2026-03-03\n2026-03-04,3,\n2026-03-05,"1"2\n\n,\n';
    expect(whys(text)).toEqual([
      { kind: 'ragged', expected: 2, found: 3 },
      { kind: 'ragged', expected: 2, found: 1 },
      null,
      { kind: 'text-after-quote', field: 1 },
      { kind: 'blank' },
      { kind: 'blank' },
    ]);
    expect(outcomes('day,cm,note\n2026-03-02,3\n')).toEqual(['refused']);
    expect(outcomes('day,cm,other\n2026-03-02,3\n')).toEqual(['reading']);
  });

  test('X20 an inch sign that is no quote is read', () => {
    expect(whats('day,height\n2026-03-02,3 1/2"\n')[0]).toMatchObject({
      measured: { text: '3 1/2"', unit: 'in', exact: 88_900_000 },
    });
  });

  test('X15 a time is read from its own column or from behind the day', () => {
    const times = whats(`day,time,cm
2026-03-02,9:05,5
2026-03-02T13:30:00Z,,5
2026-03-02 00:00:00,,5
9 Mar 2026 7.30 am,,5
2026-03-02,late,5
`).map((what) => what?.kind === 'reading' && (what.time ?? null));
    expect(times).toEqual(['09:05', '13:30', null, '07:30', false]);
  });

  test('X15 what stands beside a number is read, and a weather word not ours becomes a note', () => {
    const text = `day,rain_mm,span days,leaves,weather,note
2026-03-02,4,3 days,7,Sunny,ours
2026-03-03,4,1,,drizzle,wet
2026-03-04,4,61,,,
2026-03-05,4,,many,,
`;
    expect(whats(text).slice(0, 2)).toMatchObject([
      { spanDays: 3, leaves: 7, weather: 'sun', note: 'ours' },
      { note: 'wet; drizzle' },
    ]);
    expect(whats(text)[1]).not.toHaveProperty('spanDays');
    expect(whys(text).slice(2)).toEqual([
      { kind: 'span-days', read: '61' },
      { kind: 'leaves', read: 'many' },
    ]);
  });

  test('X21 a note longer than an entry may carry is refused, not cut', () => {
    const note = 'x'.repeat(4001);
    expect(whys(`day,cm,note\n2026-03-02,4,${note}\n`)).toEqual([
      { kind: 'too-long', field: 'note', most: 4000 },
    ]);
    expect(outcomes(`day,cm,note\n2026-03-02,4,${note.slice(1)}\n`)).toEqual(['reading']);
  });

  test('X16 words of a daily kind are taken as they are', () => {
    const text = 'date,weather\n2026-03-02,sun\n2026-03-03,drizzle\n2026-03-04,\n';
    expect(whats(text)).toEqual([
      { kind: 'kind-word', day: '2026-03-02', word: 'sun' },
      { kind: 'kind-word', day: '2026-03-03', word: 'drizzle' },
      null,
    ]);
  });

  test('X17 takes the coarsest mark on which the whole column lies', () => {
    const marks = (cells: readonly string[], unit: string) =>
      whats(`day,h ${unit}\n${cells.map((cell) => `2026-03-02,${cell}\n`).join('')}`).map(
        (what) => what?.kind === 'reading' && what.measured.mark,
      );
    expect(marks(['3', '4'], 'cm')).toEqual(['1 cm', '1 cm']);
    expect(marks(['3', '4.5'], 'cm')).toEqual(['0.5 cm', '0.5 cm']);
    expect(marks(['3', '4.5', '4.6'], 'cm')).toEqual(['1 mm', '1 mm', '1 mm']);
    expect(marks(['3', '4.65'], 'cm')).toEqual(['0.1 mm', '0.1 mm']);
    expect(marks(['3', '4 1/2', '4 1/4'], 'in')).toEqual(['1/4 in', '1/4 in', '1/4 in']);
    expect(marks(['3', '0.5'], 'in')).toEqual(['0.1 in', '0.1 in']);
    expect(marks(['0.1', '0.25'], 'in')).toEqual(['0.01 in', '0.01 in']);
    expect(marks(['1/4', '0.3'], 'in')).toEqual(['1/4 in', '0.1 in']);
    expect(marks(['3', '4 1/2 in'], 'cm')).toEqual(['1 cm', '1/2 in']);
  });

  test('X17 keeps to a mark that was chosen, where a number lies on it', () => {
    const marks = whats('day,cm\n2026-03-02,3\n2026-03-03,3.25\n', { mark: '1 mm' });
    expect(marks).toMatchObject([{ measured: { mark: '1 mm' } }, { measured: { mark: '0.1 mm' } }]);
  });

  test('X22 numbered days are counted from a day that was given', () => {
    const anchor = { number: 1, day: civilDay('2024-02-28') };
    const text = 'day,cm\n1,3\nday 3,4\n0,5\n-1,6\n2.5,7\n999999,8\n';
    const given: Partial<ImportMapping> = { days: { as: 'number', anchor } };
    expect(whats(text, given).map((what) => what?.day)).toEqual([
      '2024-02-28',
      '2024-03-01',
      '2024-02-27',
      '2024-02-26',
      undefined,
      undefined,
    ]);
    expect(whys(text, given).slice(4)).toEqual([
      { kind: 'day-number', read: '2.5' },
      { kind: 'day-number', read: '999999' },
    ]);
    expect(whys(text)[0]).toEqual({ kind: 'day-number', read: '1' });
  });

  test('X18 mixed lengths and counts have no sum', () => {
    const { totals } = preview('day,n,unit\n2026-03-02,3,cm\n2026-04-02,4,count\n');
    expect(totals.inAll).toEqual({ readingCount: 2, exact: null });
    expect(totals.byMonth.map(({ exact }) => exact)).toEqual([30_000_000, 4]);
  });

  test('X18 a sum beyond what a number holds exactly is not given', () => {
    const rows = Array.from({ length: 10_000 }, () => '2026-03-02,1000 m\n').join('');
    expect(preview(`day,m\n${rows}`).totals.inAll).toEqual({ readingCount: 10_000, exact: null });
  });

  test('X23 in slices of any length says the same, and reports progress', () => {
    const { rows, mapping } = table('day,cm\n2026-03-02,3\n2026-03-03,4.5\n2026-03-04,x\n\n');
    const whole = previewImport(rows, mapping, null);
    for (let length = 1; length <= 6; length += 1) {
      const slices = previewImportInSlices(rows, mapping, null, length);
      const reports: number[] = [];
      let step = slices.next();
      for (; !step.done; step = slices.next()) reports.push(step.value.rowsDone);
      expect(step.value).toEqual(whole);
      const expected = Math.floor(rows.length / length);
      expect(reports).toEqual(Array.from({ length: expected }, (_, index) => (index + 1) * length));
    }
  });

  test('X21 changes neither the rows nor the log it is given', () => {
    const { rows, mapping } = table('day,cm\n2026-03-02,3\n');
    const log = foldEntries([...begun, took(10, '2026-03-02', 3)]).logBySpecimen.get(bean)!;
    const before = structuredClone({ rows, mapping, log });
    previewImport(rows, mapping, log);
    expect({ rows, mapping, log }).toEqual(before);
  });
});

describe('a row that the log has already', () => {
  const text = 'day,cm,note\n2026-03-02,3,\n2026-03-02,4,\n2026-03-02,4,\n2026-03-03,,\n';

  test('X19 is told, so that a table brought in twice changes nothing', () => {
    expect(outcomes(text)).toEqual(['reading', 'reading', 'reading', 'state']);
    const once = broughtIn(begun, text);
    expect(once).toHaveLength(begun.length + 4);
    expect(outcomes(text, {}, once)).toEqual(Array(4).fill('already-there'));
    expect(broughtIn(once, text)).toEqual(once);
  });

  test('X19 is told once for each line: two equal readings of a day are both kept', () => {
    const one = [...begun, took(10, '2026-03-02', 4)];
    expect(outcomes(text, {}, one)).toEqual(['reading', 'already-there', 'reading', 'state']);
    expect(whys(text, {}, one)[1]).toEqual({
      kind: 'already-there',
      entry: anId<EntryId>(10),
      line: 'counts',
    });
  });

  test('X19 is the same value in another unit, and is not another time of the day', () => {
    const inch = written(10, {
      kind: 'reading-taken',
      specimen: bean,
      day: civilDay('2026-03-02'),
      measured: read(1, 'in', '1 in'),
    });
    expect(outcomes('day,cm\n2026-03-02,2.54\n', {}, [...begun, inch])).toEqual(['already-there']);
    const timed = 'day,time,cm\n2026-03-02,9:00,2.54\n';
    expect(outcomes(timed, {}, [...begun, inch])).toEqual(['reading']);
  });

  const corrected = (number: number, reading: number, value: number): JournalEntry =>
    written(number, {
      kind: 'reading-corrected',
      reading: anId<EntryId>(reading),
      to: { day: civilDay('2026-03-02'), measured: read(value) },
    });

  test('X19 does not come back after it was corrected or taken back', () => {
    const once = [
      ...[...begun, took(10, '2026-03-02', 3), took(11, '2026-03-02', 4)],
      ...[corrected(12, 10, 5), takenBack(13, 11)],
    ];
    const brought = preview('day,cm\n2026-03-02,3\n2026-03-02,4\n', {}, once);
    expect(brought.rows.slice(1).map(({ why }) => why)).toEqual([
      { kind: 'already-there', entry: anId(10), line: 'crossed out' },
      { kind: 'already-there', entry: anId(11), line: 'taken back' },
    ]);
  });

  test('X19 brought in, corrected at will, and brought in again, changes nothing', () => {
    const values = fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 1, maxLength: 6 });
    const changes = fc.array(fc.tuple(fc.nat(5), fc.integer({ min: 1, max: 3 })), { maxLength: 8 });
    fc.assert(
      fc.property(
        values,
        changes,
        fc.boolean(),
        fc.nat(),
        (taken, corrections, wantsLast, turn) => {
          const current = [...taken];
          const entries: JournalEntry[] = [...begun];
          for (const [index, value] of taken.entries()) {
            entries.push(took(10 + index, '2026-03-02', value));
          }
          for (const [index, [which, value]] of corrections.entries()) {
            if (which >= taken.length) continue;
            entries.push(corrected(100 + index, 10 + which, value));
            current[which] = value;
          }
          // The table first brought in, or the one the log would be written out as now.
          // Its rows may have been sorted or turned around meanwhile.
          const told = wantsLast ? current : taken;
          const start = turn % told.length;
          const turned = [...told.slice(start), ...told.slice(0, start)];
          const ordered = turn % 2 === 0 ? turned : turned.reverse();
          const rows = ordered.map((value) => `2026-03-02,${value}\n`).join('');
          const found: readonly PreviewRow[] = preview(`day,cm\n${rows}`, {}, entries).rows.slice(
            1,
          );
          expect(found.map(({ outcome }) => outcome)).toEqual(taken.map(() => 'already-there'));
          const answering = found.map(({ why }) => why?.kind === 'already-there' && why.entry);
          expect(new Set(answering).size).toBe(taken.length);
        },
      ),
      { seed: 51, numRuns: 500 },
    );
  });
});

test('X21 every draft is an entry that the journal takes', () => {
  const text = `day,time,cm,span days,leaves,weather,note
2026-03-02,9:05,5.5,2,3,sunny,a note
2026-03-03,,missed,,,,because
2026-03-04,,T,,,,
`;
  const drafts = [
    ...importDrafts(preview(text), bean),
    ...importDrafts(preview('date,weather\n2026-03-02,sun\n'), bean),
  ];
  expect(drafts.map(({ kind }) => kind)).toEqual([
    ...['reading-taken', 'day-marked', 'day-marked', 'kind-noted'],
  ]);
  for (const draft of drafts) expect(decodeEntry(written(1000, draft)).ok).toBe(true);
});
