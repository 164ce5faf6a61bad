import { addDays, civilDay, weekdayOf, type ClockTime } from '#core/calendar';
import type {
  DayState,
  EntryId,
  Investigation,
  InvestigationId,
  Quantity,
  SpecimenId,
} from '#core/journal';
import { exactPerUnit, type MarkId, type Unit } from '#core/measure';
import type { Series, SeriesDay, SeriesPoint } from '#core/series';

/** What was written for one day: a number, several, a state, words, or nothing. */
export type Written = number | readonly number[] | DayState | null;

interface Plan {
  readonly first?: string;
  readonly name?: string;
  readonly unit?: Unit;
  readonly mark?: MarkId;
  readonly quantity?: Quantity;
  readonly weekdays?: readonly number[];
  /** How many days the number at an index covers, where it is not 1. */
  readonly spanDays?: Readonly<Record<number, number>>;
}

/** A series with one thing written for each day from the first on; a Monday unless said. */
export const seriesWith = (written: readonly Written[], plan: Plan = {}): Series => {
  const { first = '2026-03-02', unit = 'cm', mark = '1 cm', name = 'Bean A' } = plan;
  const weekdays = plan.weekdays ?? [1, 2, 3, 4, 5, 6, 7];
  const points: SeriesPoint[] = [];
  const days = written.map((each, index): SeriesDay => {
    const day = addDays(civilDay(first), index);
    const numbers = typeof each === 'number' ? [each] : isState(each) || !each ? [] : each;
    for (const value of numbers) {
      points.push({
        ...{ day, unit, mark, spanDays: plan.spanDays?.[index] ?? 1 },
        exact: Math.round(value * exactPerUnit(unit)),
        reading: `reading-${points.length}` as EntryId,
      });
    }
    const weekday = weekdayOf(day);
    return {
      ...{ day, weekday, planned: weekdays.includes(weekday), gapDays: null },
      ...{ readings: [], words: [], marks: [], crossedOut: [] },
      state: numbers.length > 0 ? 'number' : isState(each) ? each : 'blank',
    };
  });
  const investigation = {
    ...{ id: 'beans' as InvestigationId, title: 'Our beans', quantity: 'plant-height' },
    ...{ unit, mark, weekdays, kinds: [], origin: 'ours', ended: null },
    ...(plan.quantity ? { quantity: plan.quantity } : {}),
  } as unknown as Investigation;
  const specimen = {
    ...{ id: `specimen-${name}` as SpecimenId, investigation: investigation.id, name },
    ...{ startedOn: civilDay(first), ended: null },
  };
  return { specimen, investigation, days, points };
};

/** Readings of a shadow on one day, by the clock. */
export const shadowSeries = (
  day: string,
  readings: readonly (readonly [string | undefined, number])[],
): Series => {
  const series = seriesWith([readings.map(([, value]) => value)], {
    first: day,
    quantity: 'shadow',
  });
  const points = series.points.map((point, index) => {
    const time = readings[index]?.[0] as ClockTime | undefined;
    return time === undefined ? point : { ...point, time };
  });
  return { ...series, points };
};

const isState = (written: Written): written is DayState => typeof written === 'string';
