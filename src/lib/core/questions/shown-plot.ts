import { systemOf, type MarkId, type Unit } from '#core/measure';
import type { LessonFacts } from './lesson-facts';
import { anyDoubted, isAbout } from './shown-values';
import { dayAmount } from '#core/series';

/** The piles of a line plot, where they may be asked about. Not part of the public door. */
export interface ShownPlot {
  /** Whether nobody doubts any of them: else nothing is asked about the whole set. */
  readonly isAllSure: boolean;
  /** Whether nobody doubts any cross at this number. */
  isSureAt(exact: number): boolean;
  readonly measured: string;
  readonly unit: Unit;
  readonly mark: MarkId;
  readonly values: readonly number[];
  /** In order of the number line; only where there is a cross. */
  readonly piles: readonly { readonly exact: number; readonly count: number }[];
}

/** Null where the crosses are of several plants, or only about what was read. */
export const shownPlot = (facts: LessonFacts): ShownPlot | null => {
  const { table } = facts;
  if (table.form !== 'measures' || table.seriesNames.length > 1) return null;
  if (table.values.some(({ text }) => isAbout(text)) || hasOtherUnit(facts)) return null;
  const isAllSure = !anyDoubted(facts);
  // Growth is of two readings: there a doubt cannot be kept to one pile.
  if (!isAllSure && facts.choice.source === 'growth-amounts') return null;
  const doubtedAt = doubtedNumbers(facts);
  const values = table.values.map(({ exact }) => exact).toSorted((one, other) => one - other);
  const countBy = new Map<number, number>();
  for (const exact of values) countBy.set(exact, (countBy.get(exact) ?? 0) + 1);
  return {
    ...{ measured: table.measured, unit: table.unit, mark: table.mark, values },
    ...{ isAllSure, isSureAt: (exact: number) => !doubtedAt.has(exact) },
    piles: [...countBy].map(([exact, count]) => ({ exact, count })),
  };
};

/**
 * What was read in another unit has no cross, or a cross where nobody read it: then the plot is not
 * what was read.
 */
const hasOtherUnit = ({ table, choice, series }: LessonFacts): boolean =>
  table.form !== 'counts' &&
  series
    .flatMap(({ days }) => days.filter(({ day }) => day >= choice.from && day <= choice.to))
    .flatMap(({ readings }) => readings.flatMap(({ all }) => all))
    .some(({ unit }) =>
      choice.told?.converts ? systemOf(unit) !== systemOf(table.unit) : unit !== table.unit,
    );

/** Every number that a doubted reading may stand at: by itself, or in the amount of its day. */
const doubtedNumbers = ({ series, choice, doubted }: LessonFacts): ReadonlySet<number> =>
  new Set(
    series.flatMap((each) =>
      each.days
        .filter(({ day }) => day >= choice.from && day <= choice.to)
        .filter(({ readings }) => readings.some(({ id }) => doubted.has(id)))
        .flatMap((day) => [
          ...day.readings
            .flatMap(({ all, counted }) => [...all, counted])
            .map(({ exact }) => exact),
          dayAmount(each, day)?.exact ?? 0,
        ]),
    ),
  );
