import type { MarkId, Unit } from '#core/measure';
import type { LessonFacts } from './lesson-facts';
import { anyDoubted, isAbout } from './shown-values';

/** The piles of a line plot, where they may be asked about. Not part of the public door. */
export interface ShownPlot {
  readonly measured: string;
  readonly unit: Unit;
  readonly mark: MarkId;
  readonly values: readonly number[];
  /** In order of the number line; only where there is a cross. */
  readonly piles: readonly { readonly exact: number; readonly count: number }[];
}

/** Null where the crosses are of several plants, doubted, or only about what was read. */
export const shownPlot = (facts: LessonFacts): ShownPlot | null => {
  const { table } = facts;
  if (table.form !== 'measures' || table.seriesNames.length > 1 || anyDoubted(facts)) return null;
  if (table.values.some(({ text }) => isAbout(text)) || hasOtherUnit(facts)) return null;
  const values = table.values.map(({ exact }) => exact).toSorted((one, other) => one - other);
  const countBy = new Map<number, number>();
  for (const exact of values) countBy.set(exact, (countBy.get(exact) ?? 0) + 1);
  return {
    ...{ measured: table.measured, unit: table.unit, mark: table.mark, values },
    piles: [...countBy].map(([exact, count]) => ({ exact, count })),
  };
};

/** What was read in another unit has no cross: then the plot is not the whole of the log. */
const hasOtherUnit = ({ table, choice, series }: LessonFacts): boolean =>
  table.form !== 'counts' &&
  !choice.told?.converts &&
  series.some(({ points }) =>
    points.some(({ day, unit }) => day >= choice.from && day <= choice.to && unit !== table.unit),
  );
