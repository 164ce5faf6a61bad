import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, civilDay, daysFrom } from '#core/calendar';
import {
  decodeTableChoice,
  drawRight,
  rightGraphOf,
  tableOf,
  type CountTable,
  type GraphTable,
  type MeasureTable,
  type TableChoice,
  type TimeTable,
  type ValueTable,
} from '#core/graphs';
import { dayStates, type DayState } from '#core/journal';
import { nearestOnMark } from '#core/measure';
import { inCm, inMm, sampleChoice, sampleLogs, sampleNotebook, sampleToday } from './sample-logs';
import { notebookOf, sibling, specimenId, thing, type Line } from './small-notebook';
import graphs from '../../reference/graphs.json';
import weather from '../../reference/rain_seattle.csv?raw';

const bothBeans = ['Window bean', 'Shelf bean'];
const march = ['2026-03-02', '2026-03-30'] as const;
const april = ['2026-04-01', '2026-04-30'] as const;

const sampleTable = <Table extends GraphTable>(...how: Parameters<typeof sampleChoice>): Table =>
  tableOf(sampleChoice(...how), sampleNotebook, sampleToday) as Table;

const counts = (table: CountTable) => table.rows.map(({ label, count }) => [label, count]);
const values = (table: ValueTable) => table.rows.map(({ label, text }) => [label, text]);

/** A table of a small notebook of our own. */
const tableIn = <Table extends GraphTable>(
  notebook: ReturnType<typeof notebookOf>,
  choice: Partial<TableChoice> & Pick<TableChoice, 'source'>,
): Table =>
  tableOf(
    {
      ...{ investigation: thing, specimens: [specimenId(0)], told: null, mostKinds: null },
      ...{ from: civilDay('2026-03-02'), to: civilDay('2026-03-31') },
      ...choice,
    },
    notebook,
    civilDay('2026-03-31'),
  ) as Table;

// The expectations below were counted by hand from the stories the made-up notebook is told by.
describe('a tally of the made-up notebook', () => {
  it('counts each weather word once a day, though two beans were read that morning', () => {
    expect(counts(sampleTable('weather-days', bothBeans, march))).toEqual([
      ...[['sun', 8] as const, ['cloud', 5] as const, ['rain', 2] as const],
    ]);
  });

  it('counts growth from one day to the very next only', () => {
    // 12, 13, 14, 17, 20, 21, 24, 25 and 26 March; on the 27th it stayed at 21 cm.
    expect(counts(sampleTable('growth-days', ['Window bean'], march))).toEqual([
      ...[['grew', 9] as const, ['did not grow', 1] as const],
    ]);
  });

  it('keeps the states of a day apart, and leaves out free days nobody wrote for', () => {
    // The day of sowing was a planned Monday, and nothing was written for it.
    expect(counts(sampleTable('state-days', ['Window bean'], march))).toEqual([
      ...[['measured', 15] as const, ['not up yet', 6] as const],
      ...[['missed', 1] as const, ['nothing written', 1] as const],
    ]);
  });

  it('sorts April into dry, wet and a trace, without the total of two days', () => {
    expect(counts(sampleTable('wet-days', ['Yard gauge'], april))).toEqual([
      ...[['dry', 17] as const, ['wet', 8] as const, ['a trace', 3] as const],
    ]);
  });

  it('counts the readings of each specimen', () => {
    // Fifteen days, and three who measured on 30 March instead of one.
    expect(counts(sampleTable('specimen-readings', bothBeans, march))).toEqual([
      ...[['Window bean', 17] as const, ['Shelf bean', 12] as const],
    ]);
  });
});

describe('a table of values of the made-up notebook', () => {
  it('has a row for every day, weekends and missed days too', () => {
    const table = sampleTable<ValueTable>(
      'day-values',
      ['Window bean'],
      ['2026-03-13', '2026-03-20'],
      inCm,
    );
    expect(values(table)).toEqual([
      ...[['Fri 13', '3'] as const, ['Sat 14', '4'] as const, ['Sun 15', ''] as const],
      ...[['Mon 16', '7'] as const, ['Tue 17', '9'] as const, ['Wed 18', ''] as const],
      // It was first read as 21 and corrected: the table has what counts now.
      ...[['Thu 19', '12'] as const, ['Fri 20', '14'] as const],
    ]);
    expect(table.rows.map(({ state }) => state)).toEqual([
      ...['number', 'number', 'blank', 'number', 'number', 'missed', 'number', 'number'],
    ]);
  });

  it('keeps a dry day at 0, a trace and a missed day without a number', () => {
    const { rows } = sampleTable<ValueTable>(
      'day-values',
      ['Yard gauge'],
      ['2026-04-01', '2026-04-14'],
      inMm,
    );
    expect(rows.map(({ exact, state }) => [exact === null ? null : exact / 1e6, state])).toEqual([
      ...[
        [0, 'number'],
        [0, 'number'],
        [3, 'number'],
        [null, 'trace'],
        [0, 'number'],
      ],
      ...[
        [0, 'number'],
        [12, 'number'],
        [5, 'number'],
        [0, 'number'],
        [0, 'number'],
      ],
      ...[
        [0, 'number'],
        [null, 'missed'],
        [null, 'number'],
        [0, 'number'],
      ],
    ]);
    // A total of two days is no day's rain: it is told, and nothing is drawn for it.
    expect(rows[12]).toMatchObject({ text: '8 in 2 days', exact: null });
  });

  it('adds rain up by the week, and draws none that began in the week before', () => {
    expect(values(sampleTable('week-values', ['Yard gauge'], april, inMm))).toEqual([
      ['week of 30 Mar (5 of 7 days)', '3'],
      ['week of 6 Apr', '17'],
      ['week of 13 Apr', '9, some of it from the week before'],
      ['week of 20 Apr', '29'],
      ['week of 27 Apr (4 of 7 days)', '4'],
    ]);
  });

  it('leaves a place for the hour that was left out', () => {
    const { rows } = sampleTable<ValueTable>(
      'hour-values',
      ['Yard stick'],
      ['2026-04-24', '2026-04-24'],
      inCm,
    );
    expect(rows.map(({ label, text }) => `${label} ${text}`.trim())).toEqual([
      ...['09:00 168', '10:00 112', '11:00 79', '12:00 60', '13:00 54', '14:00 60', '15:00'],
      '16:00 113',
    ]);
  });

  it('says about where a reading was taken to another unit', () => {
    const told = { unit: 'in', mark: '1/2 in', converts: true } as const;
    const table = sampleTable<ValueTable>(
      'day-values',
      ['Window bean'],
      ['2026-03-11', '2026-03-14'],
      told,
    );
    // 1, 2, 3, 4 cm are 0.39, 0.79, 1.18, 1.57 in (1 in = 2.54 cm exactly).
    expect(table.rows.map(({ text }) => text)).toEqual([
      ...['about 1/2', 'about 1', 'about 1', 'about 1 1/2'],
    ]);
  });
});

describe('a table of measures of the made-up notebook', () => {
  it('has the growth of each bean, over one day only', () => {
    const table = sampleTable<MeasureTable>('growth-amounts', bothBeans, march, inCm);
    const grown = (series: number) =>
      table.values.filter((value) => value.series === series).map(({ text }) => text);
    expect(grown(0)).toEqual(['1', '1', '1', '2', '2', '1', '1', '1', '1', '0']);
    expect(grown(1)).toEqual(['1', '2', '2', '1', '2', '1']);
    expect(table.seriesNames).toEqual(bothBeans);
  });

  it('has the rain of single days, and names the days that have none', () => {
    const table = sampleTable<MeasureTable>('rain-amounts', ['Yard gauge'], april, inMm);
    const wet = table.values.filter(({ exact }) => exact > 0).map(({ text }) => text);
    expect(wet).toEqual(['3', '12', '5', '1', '21', '6', '2', '4']);
    expect(table.values.filter(({ exact }) => exact === 0)).toHaveLength(17);
    expect(table.unmeasured).toEqual([
      { label: 'Sat 4 Apr', state: 'trace' },
      { label: 'Sun 12 Apr', state: 'missed' },
      { label: 'Mon 13 Apr (2 days together)', state: 'blank' },
      { label: 'Thu 16 Apr', state: 'trace' },
      { label: 'Mon 27 Apr', state: 'trace' },
    ]);
  });

  it('has each specimen once, on one day', () => {
    const table = sampleTable<MeasureTable>(
      'each-specimen',
      bothBeans,
      ['2026-03-16', '2026-03-16'],
      inCm,
    );
    expect(table.values.map(({ label, text }) => [label, text])).toEqual([
      ...[
        ['Window bean', '7'],
        ['Shelf bean', '4'],
      ],
    ]);
  });
});

describe('a table of times of the made-up notebook', () => {
  it('gives every calendar day a place, and planned days without a number a row', () => {
    const table = sampleTable<TimeTable>(
      'days-in-order',
      bothBeans,
      ['2026-03-11', '2026-03-20'],
      inCm,
    );
    expect(table.places).toEqual([
      ...['Wed 11', 'Thu 12', 'Fri 13', 'Sat 14', 'Sun 15', 'Mon 16', 'Tue 17', 'Wed 18'],
      ...['Thu 19', 'Fri 20'],
    ]);
    const shelf = table.rows.filter(({ series }) => series === 1);
    expect(shelf.map(({ place, text, state }) => [place, text || state])).toEqual([
      ...[
        [0, 'not-up-yet'],
        [1, 'not-up-yet'],
        [2, '1'],
        [3, '2'],
        [5, '4'],
        [6, '6'],
      ],
      ...[
        [7, 'missed'],
        [8, '9'],
        [9, '11'],
      ],
    ]);
  });

  it('has a blank row for the hour at which nobody read the shadow', () => {
    const table = sampleTable<TimeTable>(
      'hours-in-order',
      ['Yard stick'],
      ['2026-04-24', '2026-04-24'],
      inCm,
    );
    expect(table.places).toHaveLength(8);
    expect(table.rows[6]).toMatchObject({ place: 6, exact: null, state: 'blank' });
    const right = rightGraphOf('line-graph', table, 'grade-3');
    if (!right.ok) throw new Error(right.error.kind);
    expect(drawRight(right.value).joins.map(({ line }) => line)).toEqual([
      ...['solid', 'solid', 'solid', 'solid', 'solid', 'dashed'],
    ]);
  });
});

describe('the tables of the made-up notebook', () => {
  it.each(sampleLogs)('have a right graph: $name', ({ graph, table, stage }) => {
    const right = rightGraphOf(graph, table, stage);
    expect(right.ok || right.error).toBe(true);
  });
});

describe('a tally of days', () => {
  // Counts of Seattle's weather words by month, kept in tests/reference/graphs.json (npm
  // vega-datasets 3.2.1), counted here from the daily rows of rain_seattle.csv.
  const days = weather
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(','));

  it.each(graphs.weather_counts)('of $month agrees with the counts that were published', (each) => {
    const words = days.filter(([day]) => day!.startsWith(each.month));
    const lines = words.map(([day, , word]): Line => ({ day: day!, word: word!.trim() }));
    const kinds = Object.keys(each.counts);
    const notebook = notebookOf(
      { Sky: lines },
      { quantity: 'daily-kind', unit: 'count', mark: '1', kinds },
    );
    const table = tableIn<CountTable>(notebook, {
      ...{ source: 'kind-days', from: civilDay(`${each.month}-01`) },
      to: civilDay(`${each.month}-${each.total}`),
    });
    expect(Object.fromEntries(counts(table))).toEqual(each.counts);
    expect(table.rows.map(({ label }) => label)).toEqual(kinds);
  });

  const threeWords = notebookOf(
    {
      Sky: [
        ...['02', '03', '04', '05'].map((day) => ({ day: `2026-03-${day}`, word: 'sun' })),
        ...['06', '07'].map((day) => ({ day: `2026-03-${day}`, word: 'rain' })),
        { day: '2026-03-07', word: 'fog' },
        { day: '2026-03-08', word: 'fog' },
        { day: '2026-03-08', word: 'fog' },
      ],
    },
    { quantity: 'daily-kind', unit: 'count', mark: '1', kinds: ['sun', 'snow', 'rain', 'fog'] },
  );

  it('has a row for a word that never came, and counts a word twice on a day once', () => {
    expect(counts(tableIn(threeWords, { source: 'kind-days' }))).toEqual([
      ...[
        ['sun', 4],
        ['snow', 0],
        ['rain', 2],
        ['fog', 2],
      ],
    ]);
  });

  it('puts the smallest kinds together, a day of two of them once', () => {
    expect(counts(tableIn(threeWords, { source: 'kind-days', mostKinds: 3 }))).toEqual([
      ...[
        ['sun', 4],
        ['rain', 2],
        ['other', 2],
      ],
    ]);
    // The 7th had rain and fog: three days in all, not four.
    expect(counts(tableIn(threeWords, { source: 'kind-days', mostKinds: 2 }))).toEqual([
      ...[
        ['sun', 4],
        ['other', 3],
      ],
    ]);
  });

  it('has another name for the rest where a family says other itself', () => {
    const lines = ['02', '03'].map((day) => ({ day: `2026-03-${day}`, word: 'other' }));
    const own = notebookOf(
      { Sky: lines },
      { quantity: 'daily-kind', unit: 'count', mark: '1', kinds: ['other', 'sun', 'rain'] },
    );
    expect(counts(tableIn(own, { source: 'kind-days', mostKinds: 2 }))).toEqual([
      ...[
        ['other', 2],
        ['all others', 0],
      ],
    ]);
  });

  it('counts days the plant got shorter apart from days it stayed', () => {
    const read = ['4', '5', '5', '4'].map((text, index) => ({
      day: `2026-03-0${index + 2}`,
      read: text,
    }));
    const table = tableIn<CountTable>(notebookOf({ Bean: read }), { source: 'growth-days' });
    expect(counts(table)).toEqual([
      ['grew', 1],
      ['did not grow', 1],
      ['got shorter', 1],
    ]);
  });

  it('leaves out days outside the span', () => {
    const table = tableIn<CountTable>(threeWords, {
      ...{ source: 'kind-days', from: civilDay('2026-03-05'), to: civilDay('2026-03-06') },
    });
    expect(counts(table)).toEqual([
      ['sun', 1],
      ['snow', 0],
      ['rain', 1],
      ['fog', 0],
    ]);
  });
});

describe('reads of one thing', () => {
  const notebook = notebookOf({
    Bean: [
      { day: '2026-03-02', read: '7', again: ['8', '7'] },
      { day: '2026-03-02', read: '9', author: sibling },
      { day: '2026-03-03', read: '8' },
    ],
  });

  it('are every read of the day, by whom', () => {
    const day = civilDay('2026-03-02');
    const table = tableIn<MeasureTable>(notebook, {
      ...{ source: 'reads-of-one', from: day, to: day, told: inCm },
    });
    expect(table.values.map(({ label, text }) => `${label}: ${text}`)).toEqual([
      ...['Wren, read 1: 7', 'Wren, read 2: 8', 'Wren, read 3: 7', 'Pip, read 1: 9'],
    ]);
  });
});

describe('two units in one log', () => {
  const notebook = notebookOf({
    Bean: [
      { day: '2026-03-02', read: '5' },
      { day: '2026-03-03', read: '3', unit: 'in' },
      { day: '2026-03-04', read: '8' },
    ],
  });
  const told = { unit: 'cm', mark: '1 cm', converts: true } as const;

  it('are kept as they were read, each with its unit', () => {
    const table = tableIn<ValueTable>(notebook, {
      source: 'day-values',
      told: inCm,
      to: civilDay('2026-03-04'),
    });
    expect(table.rows.map(({ text, unit }) => [text, unit])).toEqual([
      ...[
        ['5', 'cm'],
        ['3 in', 'in'],
        ['8', 'cm'],
      ],
    ]);
  });

  it('are told in one where the choice says so', () => {
    const table = tableIn<ValueTable>(notebook, {
      source: 'day-values',
      told,
      to: civilDay('2026-03-04'),
    });
    expect(table.rows.map(({ text, unit }) => [text, unit])).toEqual([
      ...[
        ['5', 'cm'],
        ['about 8', 'cm'],
        ['8', 'cm'],
      ],
    ]);
  });

  it('never stand on one number line: a difference of the two is told and not marked', () => {
    const table = tableIn<MeasureTable>(notebook, {
      source: 'growth-amounts',
      told: inCm,
      to: civilDay('2026-03-04'),
    });
    expect(table.values).toEqual([]);
    expect(table.unmeasured.map(({ state }) => state)).toEqual(['blank', 'blank']);
  });
});

describe('shadows by the clock', () => {
  const at = (time: string, read: string): Line => ({ day: '2026-03-02', time, read });
  const day = civilDay('2026-03-02');
  const tableAt = (...lines: readonly Line[]) =>
    tableIn<TimeTable>(notebookOf({ Stick: lines }, { quantity: 'shadow' }), {
      ...{ source: 'hours-in-order', from: day, to: day, told: inCm },
    });

  it('have places as far apart as keep every reading on one', () => {
    const { places, rows } = tableAt(at('09:00', '9'), at('10:30', '6'), at('11:00', '5'));
    expect(places).toEqual(['09:00', '09:30', '10:00', '10:30', '11:00']);
    expect(rows.map(({ place, text }) => [place, text])).toEqual([
      ...[
        [0, '9'],
        [3, '6'],
        [4, '5'],
      ],
    ]);
  });

  it('keep the state of a time without a number', () => {
    const { rows } = tableAt(
      ...[at('09:00', '9'), { day: '2026-03-02', time: '10:00', state: 'no-sun' } as const],
      at('11:00', '5'),
    );
    expect(rows.map(({ place, state }) => [place, state])).toEqual([
      ...[
        [0, 'number'],
        [1, 'no-sun'],
        [2, 'number'],
      ],
    ]);
  });

  it('have no place without a time, and one for each time', () => {
    const { rows } = tableAt(
      ...[at('09:00', '9'), at('09:00', '8'), at('09:00', '3')],
      ...[at('10:00', '6'), { day: '2026-03-02', read: '4' }],
    );
    expect(rows.map(({ text }) => text)).toEqual(['8', '6']);
  });
});

describe('any table of a log', () => {
  const first = civilDay('2026-03-02');
  const oneDay = fc.oneof(
    fc.record({ read: fc.integer({ min: 0, max: 40 }).map(String) }),
    fc.record({
      read: fc.integer({ min: 0, max: 12 }).map(String),
      unit: fc.constant('in' as const),
    }),
    fc.record({ state: fc.constantFrom<DayState>(...dayStates) }),
    fc.constant(null),
  );
  const logs = fc
    .array(oneDay, { minLength: 1, maxLength: 24 })
    .map((each) =>
      each.flatMap((line, index): readonly Line[] =>
        line === null ? [] : [{ day: addDays(first, index), ...line }],
      ),
    );
  const check = (test: (lines: readonly Line[]) => void): void =>
    fc.assert(fc.property(logs, test), { seed: 20261125, numRuns: 100 });
  const last = addDays(first, 23);
  const told = (converts: boolean) => ({ unit: 'cm', mark: '1 cm', converts }) as const;

  it('never has a number that nobody read', () => {
    check((lines) => {
      const notebook = notebookOf({ Bean: lines });
      const readings = notebook.logBySpecimen.get(specimenId(0))?.readings ?? [];
      const read = new Set(readings.map(({ counted }) => counted.exact));
      const near = new Set([...read].map((exact) => nearestOnMark(exact, '1 cm')));
      for (const source of [
        'day-values',
        'days-in-order',
        'each-specimen',
        'rain-amounts',
      ] as const) {
        for (const converts of [false, true]) {
          const table = tableIn(notebook, { source, told: told(converts), to: last });
          if (table.form === 'counts') throw new Error('no counts here');
          const rows = table.form === 'measures' ? table.values : table.rows;
          for (const { exact } of rows) {
            if (exact !== null) expect((converts ? near : read).has(exact)).toBe(true);
          }
        }
      }
    });
  });

  it('has the state of every day, and a number only where one was read', () => {
    check((lines) => {
      const notebook = notebookOf({ Bean: lines });
      const lineOf = new Map(lines.map((line) => [line.day as string, line]));
      const { rows } = tableIn<ValueTable>(notebook, {
        source: 'day-values',
        told: told(false),
        to: last,
      });
      for (const { day, exact, state } of rows) {
        const line = lineOf.get(day as string);
        expect(state).toBe(line?.state ?? (line?.read === undefined ? 'blank' : 'number'));
        expect(exact === null).toBe(line?.read === undefined);
      }
      const days = daysFrom(first, lines.at(-1) ? civilDay(lines.at(-1)!.day) : first);
      expect(rows.slice(0, days.length).map(({ day }) => day)).toEqual(days);
    });
  });

  it('never mixes units among the marks of a line plot', () => {
    check((lines) => {
      const notebook = notebookOf({ Bean: lines });
      const inches = lines.filter(({ unit }) => unit === 'in').length;
      const centimetres = lines.filter(
        ({ read, unit }) => read !== undefined && unit !== 'in',
      ).length;
      const table = tableIn<MeasureTable>(notebook, {
        source: 'rain-amounts',
        told: told(false),
        to: last,
      });
      expect(table.values).toHaveLength(centimetres);
      expect(table.unmeasured.filter(({ label }) => label.endsWith(' in'))).toHaveLength(inches);
    });
  });
});

describe('a choice kept as data', () => {
  const choice = sampleChoice('day-values', ['Window bean'], ['2026-03-11', '2026-03-21'], inCm);

  it('comes back from JSON as it was, also with parts of a later program', () => {
    const kept: unknown = JSON.parse(JSON.stringify({ ...choice, later: true }));
    expect(decodeTableChoice(kept)).toEqual({ ok: true, value: choice });
    const given = { ...choice, givenSteps: true };
    expect(decodeTableChoice(given)).toEqual({ ok: true, value: given });
  });

  it.each([
    ['source', { source: 'tea-leaves' }],
    ['investigation', { investigation: 'x' }],
    ['specimens', { specimens: [] }],
    ['specimens.0', { specimens: [7] }],
    ['from', { from: '2026-02-30' }],
    ['to', { to: '2026-03-10' }],
    ['told', { told: { unit: 'cm', mark: '1/2 in', converts: true } }],
    ['told.mark', { told: { unit: 'cm', mark: '1 furlong', converts: true } }],
    ['mostKinds', { mostKinds: 1 }],
    ['givenSteps', { givenSteps: 'yes' }],
  ] as const)('with a wrong %s is refused', (part, wrong) => {
    expect(decodeTableChoice({ ...choice, ...wrong })).toEqual({
      ok: false,
      error: { kind: 'not-a-choice', part },
    });
  });

  it.each([null, undefined, 'a table', 7, []])('is not %j', (data) => {
    expect(decodeTableChoice(data).ok).toBe(false);
  });

  it('has no table in a notebook without the log', () => {
    expect(tableOf(choice, notebookOf({ Bean: [] }), sampleToday)).toBeNull();
    expect(tableOf({ ...choice, told: null }, sampleNotebook, sampleToday)).toBeNull();
  });
});
