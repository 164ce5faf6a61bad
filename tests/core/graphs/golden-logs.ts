import { addDays, civilDay, formatDay, type CivilDay } from '#core/calendar';
import {
  rightGraphOf,
  type CountTable,
  type GraphKind,
  type GraphTable,
  type MeasureTable,
  type RightGraph,
  type TimeTable,
  type ValueTable,
} from '#core/graphs';
import type { DayState, SpecimenId, Stage } from '#core/journal';
import {
  exactPerUnit,
  formatExactNumber,
  parseMeasured,
  type MarkId,
  type Unit,
} from '#core/measure';

/** A made-up table with the graph and the stage it is drawn for. */
export interface GoldenLog {
  readonly name: string;
  readonly graph: GraphKind;
  readonly stage: Stage;
  readonly table: GraphTable;
}

/** How many of each kind. */
export const countsTable = (
  counted: string,
  counts: Readonly<Record<string, number>>,
): CountTable => ({
  form: 'counts',
  counted,
  rows: Object.entries(counts).map(([label, count]) => ({ label, count })),
});

/** One value a day from the first day on: text as written, a state, or null for a blank day. */
export const valuesTable = (
  measured: string,
  [unit, mark]: readonly [Unit, MarkId],
  first: string,
  written: readonly (string | null)[],
): ValueTable => ({
  ...{ form: 'values', measured, unit, mark },
  rows: written.map((each, index) => {
    const day = addDays(civilDay(first), index);
    return { day, label: dayLabel(day), ...numberOrState(each, unit, mark) };
  }),
});

/** One cross for each text, each with the series it belongs to (0 unless said). */
export const measuresTable = (
  measured: string,
  [unit, mark]: readonly [Unit, MarkId],
  texts: readonly (string | readonly [string, number])[],
  seriesNames: readonly string[] = ['ours'],
): MeasureTable => ({
  ...{ form: 'measures', measured, unit, mark, seriesNames, unmeasured: [] },
  values: texts.map((each, index) => {
    const [text, series] = typeof each === 'string' ? [each, 0] : each;
    return { label: `number ${index + 1}`, exact: exactOf(text, unit, mark), text, series };
  }),
});

/** Heights of one or more specimens over the days; a blank day of null has no row. */
export const timesTable = (
  measured: string,
  [unit, mark]: readonly [Unit, MarkId],
  first: string,
  writtenByName: Readonly<Record<string, readonly (string | null)[]>>,
): TimeTable => {
  const names = Object.keys(writtenByName);
  const length = Math.max(...Object.values(writtenByName).map((each) => each.length));
  const days = Array.from({ length }, (_, index) => addDays(civilDay(first), index));
  return {
    ...{ form: 'times', measured, unit, mark, seriesNames: names },
    specimens: names.map((name) => name as SpecimenId),
    places: days.map(dayLabel),
    rows: names.flatMap((name, series) =>
      writtenByName[name]!.flatMap((each, place) =>
        each === null ? [] : [{ place, series, ...numberOrState(each, unit, mark) }],
      ),
    ),
  };
};

export const exactOf = (text: string, unit: Unit, mark: MarkId): number => {
  const read = parseMeasured(text, { unit, mark });
  if (!read.ok) throw new Error(`${text} ${unit} is no reading: ${read.error.kind}`);
  return read.value.exact;
};

const dayLabel = (day: CivilDay): string =>
  formatDay(day, 'short').split(' ').slice(0, 2).join(' ');

const states: readonly string[] = ['not-up-yet', 'missed', 'no-sun', 'trace', 'lost', 'blank'];

const numberOrState = (written: string | null, unit: Unit, mark: MarkId) => {
  if (written === null) return { exact: null, unit, text: '', state: 'blank' as const };
  if (states.includes(written)) {
    return { exact: null, unit, text: '', state: written as DayState | 'blank' };
  }
  return { exact: exactOf(written, unit, mark), unit, text: written, state: 'number' as const };
};

/** Quarter inches from `from` on: so many crosses at each. */
const pile = (from: number, counts: readonly number[]): readonly string[] =>
  counts.flatMap((count, index) =>
    Array.from({ length: count }, () =>
      formatExactNumber((from + index) * (exactPerUnit('in') / 4), 'in', '1/4 in'),
    ),
  );

/**
 * Tables of every form, stage and size, all made up but those that name a source. Each of them has
 * a right graph (`goldenRight`).
 */
export const goldenLogs: readonly GoldenLog[] = [
  {
    ...{ name: 'three kinds of weather', graph: 'picture-graph', stage: 'grade-1' },
    table: countsTable('days', { sun: 5, cloud: 3, rain: 2 }),
  },
  {
    ...{ name: 'four kinds with one that never came', graph: 'picture-graph', stage: 'grade-2' },
    table: countsTable('days', { sun: 4, cloud: 6, rain: 3, snow: 0 }),
  },
  {
    // October 2013 in Seattle: npm vega-datasets 3.2.1, kept in tests/reference/graphs.json.
    ...{ name: 'a month of weather, two days a picture', graph: 'picture-graph', stage: 'grade-3' },
    table: countsTable('days', { sun: 16, rain: 12, fog: 3, drizzle: 0, snow: 0 }),
  },
  {
    // Values of a scaled picture graph, kept in tests/reference/graphs.json.
    ...{ name: 'seeds by the fives', graph: 'picture-graph', stage: 'grade-3' },
    table: countsTable('seeds', { window: 25, shelf: 40, dark: 15 }),
  },
  {
    ...{ name: 'four kinds of weather', graph: 'bar-graph', stage: 'grade-2' },
    table: countsTable('days', { sun: 7, cloud: 4, rain: 6, wind: 1 }),
  },
  {
    // January 2012 in Seattle: npm vega-datasets 3.2.1, kept in tests/reference/graphs.json.
    ...{ name: 'a month of weather by twos', graph: 'bar-graph', stage: 'grade-3' },
    table: countsTable('days', { sun: 4, rain: 18, fog: 0, drizzle: 2, snow: 7 }),
  },
  {
    // The window bean of the made-up notebook, 11 to 17 March; a Sunday and no more is blank.
    ...{ name: 'heights of a week in centimetres', graph: 'bar-graph', stage: 'grade-2' },
    table: valuesTable('height', ['cm', '1 cm'], '2026-03-11', [
      '1',
      '2',
      '3',
      '4',
      null,
      '7',
      '9',
    ]),
  },
  {
    ...{ name: 'heights in half inches with a missed day', graph: 'bar-graph', stage: 'grade-3' },
    table: valuesTable('height', ['in', '1/2 in'], '2026-03-09', [
      ...['1', '1 1/2', '1 1/2', 'missed', '2 1/2', null, null, '4'],
    ]),
  },
  {
    // The yard gauge of the made-up notebook, 1 to 10 April: 0 was read, a trace was not.
    ...{ name: 'rain of ten days with noughts and a trace', graph: 'bar-graph', stage: 'grade-2' },
    table: valuesTable('rain', ['mm', '1 mm'], '2026-04-01', [
      ...['0', '0', '3', 'trace', '0', '0', '12', '5', '0', '0'],
    ]),
  },
  {
    ...{ name: 'ten seedlings in whole inches', graph: 'line-plot', stage: 'grade-2' },
    table: measuresTable(
      'height',
      ['in', '1 in'],
      ['3', '5', '4', '5', '6', '5', '4', '3', '8', '5'],
    ),
  },
  {
    // The first 24 setosa sepal lengths to the quarter inch: Anderson 1935, Fisher 1936, kept in
    // tests/reference/graphs.json as 7/4: 6, 2: 11, 9/4: 7.
    ...{ name: 'sepals to the quarter inch', graph: 'line-plot', stage: 'grade-3' },
    table: measuresTable('length', ['in', '1/4 in'], pile(7, [6, 11, 7])),
  },
  {
    ...{ name: 'quarter inches past one, with empty ticks', graph: 'line-plot', stage: 'grade-3' },
    table: measuresTable(
      'growth',
      ['in', '1/4 in'],
      [...['1/4', '1/2', '3/4', '1/2', '1 1/2', '3/4', '1/2', '1/4', '1 3/4', '3/4']],
    ),
  },
  {
    ...{ name: 'two pots in half inches', graph: 'line-plot', stage: 'grade-3' },
    table: measuresTable(
      'height',
      ['in', '1/2 in'],
      [
        ...[['2', 0] as const, ['2 1/2', 0] as const, ['2 1/2', 0] as const, ['3', 0] as const],
        ...[['3', 1] as const, ['3', 1] as const, ['3 1/2', 1] as const, ['4', 1] as const],
      ],
      ['window', 'shelf'],
    ),
  },
  {
    ...{ name: 'a bean over nine days with a missed one', graph: 'line-graph', stage: 'grade-3' },
    table: timesTable('height', ['cm', '1 cm'], '2026-03-11', {
      // Saturday is measured, Sunday is not planned, Wednesday is missed.
      'Window bean': ['1', '2', '3', '4', null, '7', '9', 'missed', '12'],
    }),
  },
  {
    ...{ name: 'two beans in whole inches', graph: 'line-graph', stage: 'grade-2' },
    table: timesTable('height', ['in', '1 in'], '2026-03-09', {
      'Window bean': ['1', '1', '2', '2', '3', null, null, '5'],
      'Shelf bean': ['not-up-yet', 'not-up-yet', '1', '1', '2', null, null, '3'],
    }),
  },
];

/** The golden log of this name. */
export const goldenLog = (name: string): GoldenLog => {
  const found = goldenLogs.find((each) => each.name === name);
  if (!found) throw new Error(`There is no golden log called ${name}`);
  return found;
};

/** What a right graph of this golden log has. */
export const goldenRight = (name: string): RightGraph => {
  const { graph, table, stage } = goldenLog(name);
  const right = rightGraphOf(graph, table, stage);
  if (!right.ok) throw new Error(`${name} has no right graph: ${right.error.kind}`);
  return right.value;
};
