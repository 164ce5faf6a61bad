import type { CivilDay, ClockTime } from '#core/calendar';
import type { Reading } from '#core/journal';
import { markById, systemOf, type MarkId, type Unit } from '#core/measure';
import type { Series } from '#core/series';
import type { LessonFacts } from './lesson-facts';

/**
 * The numbers a graph shows, each with whether it may be asked about. A number may be when nobody
 * doubts it and it is told as it was read: not "about", and not inches as centimetres. None of this file is in the public door.
 */
export interface ShownValue {
  readonly day: CivilDay;
  readonly time: ClockTime | null;
  readonly exact: number;
  readonly unit: Unit;
  readonly mark: MarkId;
  /** What it was read to: the coarsest, where its readings differ; the graph's may be finer. */
  readonly readMark: MarkId;
  readonly isSure: boolean;
}

export interface ShownLog {
  readonly name: string;
  readonly measured: string;
  /** In order of time. */
  readonly values: readonly ShownValue[];
  /** Days of the table that have no number, with what stands there instead. */
  readonly without: readonly { readonly day: CivilDay; readonly state: string }[];
}

/** The logs of a graph with one value a day; none for other graphs. */
export const dayLogs = (facts: LessonFacts): readonly ShownLog[] => {
  const { table, choice, series } = facts;
  if (choice.source === 'day-values' && table.form === 'values' && series[0]) {
    const rows = table.rows.flatMap((row) => (row.day ? [{ ...row, day: row.day }] : []));
    return [logOf(facts, series[0], series[0].specimen.name, rows)];
  }
  if (choice.source === 'values-side-by-side' && table.form === 'values') {
    return series.map((each, index) => {
      const rows = table.rows.flatMap((row) =>
        row.day && row.series === index ? [{ ...row, day: row.day }] : [],
      );
      // Only days that both share have a place: of the others nothing is asked.
      return { ...logOf(facts, each, each.specimen.name, rows), without: [] };
    });
  }
  if (choice.source !== 'days-in-order' || table.form !== 'times') return [];
  const days = daysShown(facts);
  return series.map((each, index) =>
    logOf(
      ...([facts, each, table.seriesNames[index] ?? each.specimen.name] as const),
      table.rows.flatMap((row) =>
        row.series === index ? [{ ...row, day: days[row.place] as CivilDay }] : [],
      ),
    ),
  );
};

/** The values of one day's hours; none for other graphs. */
export const hourValues = ({
  table,
  choice,
  series,
  doubted,
}: LessonFacts): readonly ShownValue[] => {
  if (choice.source !== 'hour-values' && choice.source !== 'hours-in-order') return [];
  const day = series[0]?.days.find((each) => each.day >= choice.from && each.day <= choice.to);
  const found = rowsByTime(table);
  return found.flatMap(({ time, exact, unit, text }): readonly ShownValue[] => {
    if (exact === null || !day || table.form === 'counts') return [];
    const readings = day.readings.filter((each) => each.time === time);
    const isSure = !isAbout(text) && areSure(readings, unit, doubted);
    return [
      { day: day.day, time, exact, unit, mark: table.mark, readMark: coarsest(readings), isSure },
    ];
  });
};

/** Whether a reading shown on the graph is doubted. */
export const anyDoubted = ({ series, choice, doubted }: LessonFacts): boolean =>
  series.some(({ days }) =>
    days.some(
      ({ day, readings }) =>
        day >= choice.from && day <= choice.to && readings.some(({ id }) => doubted.has(id)),
    ),
  );

/** Whether a table says a number with "about", because it was read otherwise. */
export const isAbout = (text: string): boolean => text.startsWith('about ');

/** Nobody doubts one of them, and they were read on the side of the ruler that they are told in. */
const areSure = (
  readings: readonly Reading[],
  unit: Unit,
  doubted: LessonFacts['doubted'],
): boolean =>
  readings.every(
    ({ id, counted }) => !doubted.has(id) && systemOf(counted.unit) === systemOf(unit),
  );

const coarsest = (readings: readonly Reading[]): MarkId =>
  readings
    .map(({ counted }) => counted.mark)
    .reduce((one, other) => (markById(other).exact > markById(one).exact ? other : one));

interface Row {
  readonly day: CivilDay;
  readonly exact: number | null;
  readonly unit: Unit;
  readonly text: string;
  readonly state: string;
}

const logOf = (
  { table, choice, doubted }: LessonFacts,
  series: Series,
  name: string,
  rows: readonly Row[],
): ShownLog => {
  const dayOf = new Map(series.days.map((each) => [each.day, each]));
  const mark = table.form === 'counts' ? '1' : table.mark;
  const hasRow = new Set(rows.map(({ day }) => day));
  // A free day has a place on a line graph and no row: to a reader it has no number either.
  const free = series.days
    .filter(({ day }) => day >= choice.from && day <= choice.to && !hasRow.has(day))
    .map(({ day }) => ({ day, exact: null, state: 'blank' }));
  return {
    ...{ name, measured: table.form === 'counts' ? '' : table.measured },
    values: rows
      .flatMap(({ day, exact, unit, text }): readonly ShownValue[] => {
        if (exact === null) return [];
        const readings = dayOf.get(day)?.readings ?? [];
        const isSure = !isAbout(text) && areSure(readings, unit, doubted);
        return [{ day, time: null, exact, unit, mark, readMark: coarsest(readings), isSure }];
      })
      .toSorted((one, other) => (one.day < other.day ? -1 : 1)),
    without: [...rows, ...free]
      .flatMap(({ day, exact, state }) => (exact === null ? [{ day, state }] : []))
      .toSorted((one, other) => (one.day < other.day ? -1 : 1)),
  };
};

const daysShown = ({ series, choice }: LessonFacts): readonly CivilDay[] =>
  [
    ...new Set(
      series.flatMap(({ days }) =>
        days.map(({ day }) => day).filter((day) => day >= choice.from && day <= choice.to),
      ),
    ),
  ].sort();

const rowsByTime = (
  table: LessonFacts['table'],
): readonly {
  readonly time: ClockTime;
  readonly exact: number | null;
  readonly unit: Unit;
  readonly text: string;
}[] => {
  if (table.form === 'values') {
    return table.rows.map((row) => ({ ...row, time: row.label as ClockTime }));
  }
  if (table.form !== 'times') return [];
  return table.rows.map((row) => ({ ...row, time: table.places[row.place] as ClockTime }));
};
