import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, civilDay, type ClockTime } from '#core/calendar';
import {
  guessColumns,
  importDrafts,
  logColumns,
  previewImport,
  readCsv,
  writeLogCsv,
  type ColumnGuess,
  type CsvRow,
} from '#core/exchange';
import {
  dayStates,
  foldEntries,
  weatherWords,
  type EntryDraft,
  type EntryId,
  type JournalEntry,
  type Notebook,
  type PersonId,
  type SpecimenLog,
} from '#core/journal';
import { formatExactNumber, markById, marks, marksFor, parseMeasured } from '#core/measure';
import type { MarkId, Measured, Unit } from '#core/measure';
import { anId, bean, begun, heights, read, took, takenBack, written } from '../journal/entries';

const rowsOf = (notebook: Notebook): ColumnGuess & { readonly rows: readonly CsvRow[] } => {
  const csv = readCsv(writeLogCsv(notebook));
  if (!csv.ok) throw new Error(csv.error.kind);
  return { rows: csv.value.rows, ...guessColumns(csv.value.rows, csv.value.separator) };
};

/** The table's rows by heading, without the cells that are empty. */
const linesOf = (notebook: Notebook) => {
  const [heading, ...rows] = rowsOf(notebook).rows;
  return rows.map(({ fields }) =>
    Object.fromEntries(
      fields.map((field, column) => [heading!.fields[column], field]).filter(([, field]) => field),
    ),
  );
};

describe('our own table of a log', () => {
  const day = civilDay('2026-03-02');
  const notebook = foldEntries([
    ...begun,
    written(10, {
      kind: 'reading-taken',
      specimen: bean,
      day,
      time: '08:15' as ClockTime,
      measured: { text: '4 1/2', unit: 'in', mark: '1/2 in', exact: 114_300_000 },
      leaves: 2,
      weather: 'cloud',
      note: '=2+3, or "so"',
    }),
    written(11, {
      kind: 'reading-corrected',
      reading: anId<EntryId>(10),
      to: { day, measured: { text: '4', unit: 'in', mark: '1/2 in', exact: 101_600_000 } },
      why: 'read from the wrong end',
    }),
    took(12, '2026-03-03', 5),
    takenBack(13, 12),
    written(14, {
      kind: 'day-marked',
      specimen: bean,
      day: addDays(day, 2),
      state: 'missed',
      why: 'away',
    }),
    written(15, { kind: 'note-written', specimen: bean, day: addDays(day, 3), text: 'a snail!' }),
    written(16, { kind: 'kind-noted', specimen: bean, day: addDays(day, 4), word: 'foggy' }),
    written(17, { kind: 'note-written', investigation: heights, day, text: 'bought seeds' }),
    written(18, { kind: 'note-written', day, text: 'spring' }),
  ]);

  test('X12 has one row for each line, struck-out lines with what, why, who and when', () => {
    const of = { investigation: 'Our beans', specimen: 'Bean A', who: 'Wren' };
    const first = { ...of, day, leaves: '2', weather: 'cloud', note: '\'=2+3, or "so"' };
    expect(linesOf(notebook)).toEqual([
      {
        ...first,
        ...{ state: 'number', reading: '4', unit: 'in', mark: '1/2 in', value: '4', cm: '10.16' },
        line: 'counts',
      },
      {
        ...first,
        time: '08:15',
        ...{ state: 'number', reading: '4 1/2', unit: 'in', mark: '1/2 in' },
        ...{ value: '4.5', cm: '11.43' },
        line: 'crossed out',
        'line why': 'read from the wrong end',
        'line who': 'Wren',
        'line when': '2026-03-02T08:11:00.000Z',
      },
      {
        ...{ ...of, day: '2026-03-03', state: 'number', reading: '5', unit: 'cm', mark: '1 cm' },
        ...{ value: '5', cm: '5', line: 'taken back', 'line who': 'Wren' },
        'line when': '2026-03-02T08:13:00.000Z',
      },
      { ...of, day: '2026-03-04', state: 'missed', why: 'away', line: 'counts' },
      { ...of, day: '2026-03-05', state: 'note', note: 'a snail!', line: 'counts' },
      { ...of, day: '2026-03-06', state: 'word', word: 'foggy', line: 'counts' },
      {
        ...{ day, investigation: 'Our beans', who: 'Wren', state: 'note', note: 'bought seeds' },
        line: 'counts',
      },
      { day, who: 'Wren', state: 'note', note: 'spring', line: 'counts' },
    ]);
  });

  test('X12 names who wrote each line, and who struck it out', () => {
    const other = anId<PersonId>(702);
    const [person] = begun.filter(({ kind }) => kind === 'person-added');
    const again = (number: number, value: number, author: PersonId | null) =>
      written(
        number,
        {
          kind: 'reading-corrected',
          reading: anId<EntryId>(10),
          to: { day, measured: read(value) },
        },
        { author },
      );
    const lines = linesOf(
      foldEntries([
        ...begun,
        { ...person!, id: anId<EntryId>(9), person: other, name: 'Sky' },
        took(10, '2026-03-02', 3),
        again(11, 4, other),
        again(12, 5, null),
      ]),
    );
    const who = lines.map((line) => [line['reading'], line['who'], line['line who']]);
    expect(who).toEqual([
      ['3', 'Wren', 'Sky'],
      ['4', 'Sky', undefined],
      ['5', undefined, undefined],
    ]);
  });

  test('X12 says of every column what it holds', () => {
    expect(rowsOf(notebook).rows[0]?.fields).toEqual(logColumns.map(({ heading }) => heading));
    for (const { holds } of logColumns) expect(holds).toMatch(/^.{10,}\.$/);
  });

  test('X12 of chosen investigations leaves the others out', () => {
    expect(writeLogCsv(notebook, []).split('\r\n')).toHaveLength(2);
    expect(writeLogCsv(notebook, [heights])).not.toContain('spring');
  });

  test('X13 brings back what counts, and passes over what was struck out', () => {
    const { rows, mapping } = rowsOf(notebook);
    expect(previewImport(rows, mapping, null).rows.map(({ outcome }) => outcome)).toEqual([
      ...['passed-over', 'reading', 'passed-over', 'passed-over', 'state', 'note', 'kind-word'],
      ...['passed-over', 'passed-over'],
    ]);
  });

  test('X13 survives a spreadsheet that writes the days its own way and moves columns', () => {
    const { rows } = rowsOf(notebook);
    const moved = rows.map((row) => ({
      ...row,
      fields: [...row.fields]
        .map((field) => field.replace(/^2026-03-0(\d)$/, '3/$1/2026'))
        .reverse(),
    }));
    const { mapping, questions } = guessColumns(moved);
    expect(mapping.isOwn).toBe(true);
    expect(questions).toEqual(['day-order']);
    const days = { as: 'date', order: 'month-first' } as const;
    const { rows: previewed } = previewImport(moved, { ...mapping, days }, null);
    expect(previewed[1]?.what).toMatchObject({ day, measured: { exact: 101_600_000 } });
  });

  test('X13 keeps a nought that was read, whatever nought means in other tables', () => {
    const zero = foldEntries([...begun, took(10, '2026-03-02', 0)]);
    const { rows, mapping } = rowsOf(zero);
    const preview = previewImport(rows, { ...mapping, zeroMeans: 'not-up-yet' }, null);
    expect(preview.rows[1]).toMatchObject({ outcome: 'reading', what: { measured: read(0) } });
  });

  test('X13 refuses a row whose reading and exact column were edited apart', () => {
    const { rows, mapping } = rowsOf(notebook);
    const edit = (from: string, to: string) =>
      rows.map((row) => ({
        ...row,
        fields: row.fields.map((field) => (field === from ? to : field)),
      }));
    const why = (edited: readonly CsvRow[]) => previewImport(edited, mapping, null).rows[1]?.why;
    expect(why(rows)).toBe(null);
    expect(why(edit('10.16', '10.2'))).toEqual({ kind: 'disagrees', read: '4', exactly: '10.2' });
    expect(why(edit('10.16', ''))).toEqual({ kind: 'disagrees', read: '4', exactly: '' });
    expect(why(edit('1/2 in', '1 cm'))).toEqual({ kind: 'mark', read: '1 cm' });
    expect(why(edit('1/2 in', '1/3 in'))).toEqual({ kind: 'mark', read: '1/3 in' });
    expect(why(edit('in', 'hands'))).toEqual({ kind: 'unit', read: 'hands' });
    expect(why(edit('counts', 'maybe'))).toEqual({ kind: 'line', read: 'maybe' });
  });
});

/** Readings to every mark of every unit, as a family would have typed them. */
const measureds: fc.Arbitrary<Measured> = fc
  .constantFrom<Unit>('in', 'ft', 'yd', 'mm', 'cm', 'm', 'count')
  .chain((unit) =>
    fc.tuple(fc.constant(unit), fc.constantFrom(...marksFor(unit).map(({ id }) => id))),
  )
  .chain(([unit, mark]) =>
    fc.tuple(fc.constant(unit), fc.constant(mark), fc.nat(400), fc.boolean()),
  )
  .map(([unit, mark, steps, comma]) => typed(unit, mark, steps, comma));

function typed(unit: Unit, mark: MarkId, steps: number, comma: boolean): Measured {
  const decimal = comma ? 'comma' : 'point';
  const text = formatExactNumber(steps * markById(mark).exact, unit, mark, { decimal });
  const parsed = parseMeasured(text, { unit, mark, decimal });
  if (!parsed.ok) throw new Error(`${text} ${unit} to ${mark}: ${parsed.error.kind}`);
  return parsed.value;
}

const prose = fc.string({
  unit: fc.constantFrom(...'\'=+-@ \t\r\n,;"aé🌱1'),
  minLength: 1,
  maxLength: 12,
});
const days = fc.nat(6).map((shift) => addDays(civilDay('2026-02-27'), shift));
const times = fc.constantFrom('07:30', '19:05') as fc.Arbitrary<ClockTime>;
const optional = <Value>(value: fc.Arbitrary<Value>) =>
  fc.option(value, { nil: undefined, freq: 2 });

const drafts: fc.Arbitrary<EntryDraft> = fc
  .oneof(
    {
      weight: 4,
      arbitrary: fc.record({
        kind: fc.constant('reading-taken' as const),
        specimen: fc.constant(bean),
        day: days,
        time: optional(times),
        measured: measureds,
        again: optional(fc.array(measureds, { minLength: 1, maxLength: 2 })),
        spanDays: optional(fc.integer({ min: 2, max: 60 })),
        leaves: optional(fc.nat(999)),
        weather: optional(fc.constantFrom(...weatherWords)),
        note: optional(prose),
      }),
    },
    fc.record({
      kind: fc.constant('day-marked' as const),
      specimen: fc.constant(bean),
      day: days,
      time: optional(times),
      state: fc.constantFrom(...dayStates),
      why: optional(prose),
    }),
    fc.record({
      kind: fc.constant('kind-noted' as const),
      specimen: fc.constant(bean),
      day: days,
      word: prose,
    }),
    fc.record({
      kind: fc.constant('note-written' as const),
      specimen: fc.constant(bean),
      day: days,
      text: prose,
    }),
    fc.record({
      kind: fc.constant('reading-corrected' as const),
      reading: fc.nat(12).map((number) => anId<EntryId>(100 + number)),
      to: fc.record({ day: days, measured: measureds }),
      why: optional(prose),
    }),
    fc.record({
      kind: fc.constant('entry-taken-back' as const),
      entry: fc.nat(12).map((number) => anId<EntryId>(100 + number)),
      why: optional(prose),
    }),
  )
  .map((draft) => withoutGaps(draft) as EntryDraft);

/** JSON has no undefined, and neither has an entry. */
const withoutGaps = (draft: object): object =>
  Object.fromEntries(Object.entries(draft).filter(([, value]) => value !== undefined));

const journals = fc
  .array(drafts, { maxLength: 12 })
  .map((all): readonly JournalEntry[] => [
    ...begun,
    ...all.map((draft, index) => written(100 + index, draft)),
  ]);

/** What counts in a log, without who wrote it when, in an order of its own. */
function sayings(log: SpecimenLog | undefined, notebook: Notebook): readonly string[] {
  const readings = (log?.readings ?? []).filter(({ takenBack }) => !takenBack);
  const marked = (log?.dayMarks ?? []).filter(({ takenBack }) => !takenBack);
  const words = (log?.kindNotes ?? []).filter(({ takenBack }) => !takenBack);
  const notes = notebook.notes.filter((note) => note.specimen === bean && !note.takenBack);
  return [
    ...readings.map(({ day, time, counted, all, spanDays, leaves, weather, note }) =>
      JSON.stringify({ day, time, counted, all, spanDays, leaves, weather, note }),
    ),
    ...marked.map(({ day, time, state, why }) => JSON.stringify({ day, time, state, why })),
    ...words.map(({ day, word }) => JSON.stringify({ day, word })),
    ...notes.map(({ day, text }) => JSON.stringify({ day, text })),
  ].sort();
}

describe('our own table, out and in again', () => {
  test('X13 gives the same days, states, readings, words and notes', () => {
    fc.assert(
      fc.property(journals, (entries) => {
        const notebook = foldEntries(entries);
        const { rows, mapping, questions } = rowsOf(notebook);
        expect(questions).toEqual([]);
        const preview = previewImport(rows, mapping, null);
        expect(preview.rows.filter(({ outcome }) => outcome === 'refused')).toEqual([]);
        const brought = importDrafts(preview, bean).map((draft, index) =>
          written(500 + index, draft),
        );
        const again = foldEntries([...begun, ...brought]);
        expect(sayings(again.logBySpecimen.get(bean), again)).toEqual(
          sayings(notebook.logBySpecimen.get(bean), notebook),
        );
      }),
      { seed: 61, numRuns: 300 },
    );
  });

  test('X19 into the log it came from changes nothing', () => {
    fc.assert(
      fc.property(journals, (entries) => {
        const notebook = foldEntries(entries);
        const { rows, mapping } = rowsOf(notebook);
        const log = notebook.logBySpecimen.get(bean) ?? {
          readings: [],
          dayMarks: [],
          kindNotes: [],
        };
        const preview = previewImport(rows, mapping, { ...log, notes: notebook.notes });
        expect(importDrafts(preview, bean)).toEqual([]);
        expect(preview.countByOutcome.refused).toBe(0);
      }),
      { seed: 62, numRuns: 300 },
    );
  });

  test('X13 every mark of every unit is among what was tried', () => {
    const tried = new Set(
      fc.sample(measureds, { seed: 61, numRuns: 2000 }).map(({ mark }) => mark),
    );
    expect(tried).toEqual(new Set(marks.map(({ id }) => id)));
    expect(read(3)).toEqual(typed('cm', '1 cm', 3, false));
  });
});
