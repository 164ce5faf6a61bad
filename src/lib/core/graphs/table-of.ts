import type { CivilDay } from '#core/calendar';
import type { Notebook } from '#core/journal';
import { seriesOf, type Series } from '#core/series';
import { cutToDays } from './cut-to-days';
import type { GraphTable } from './graph-table';
import { eachSpecimenTable, growthTable, rainAmountTable, readsOfOneTable } from './measure-tables';
import type { TableChoice, TableSource, ToldIn } from './table-choice';
import { sideBySideTable } from './side-by-side-table';
import { countTable } from './tally-tables';
import { dayTimeTable, hourTimeTable } from './time-tables';
import { dayValueTable, hourValueTable, weekValueTable } from './value-tables';

/**
 * The table of a choice, out of the notebook as it stands now. Only numbers that were read become
 * values (added up for a week, subtracted for growth, taken to a coarser mark or another unit where
 * the choice says so); every day that was planned or written for and has no number keeps its
 * state. Null when the notebook has none of the logs, or the choice does not say how measures are
 * told.
 *
 * @param today the day it is where the family is
 * @example
 * tableOf({ source: 'day-values', specimens: ['no-such-bean'], from: '2026-03-02', to: '2026-03-10', told: null, mostKinds: null }, foldEntries([]), '2026-03-10') // => null
 */
export const tableOf = (
  choice: TableChoice,
  notebook: Notebook,
  today: CivilDay,
): GraphTable | null =>
  tableFrom(
    choice,
    choice.specimens.flatMap((specimen) => seriesOf(notebook, specimen, today) ?? []),
    notebook,
  );

/** The same, from logs at hand that are not cut to the days of the choice. Not in the door. */
export const tableFrom = (
  choice: TableChoice,
  whole: readonly Series[],
  notebook: Notebook,
): GraphTable | null => {
  const logs = whole.map((series) => cutToDays(series, choice));
  const [first] = logs;
  if (!first) return null;
  const counts = countTable(choice, logs);
  if (counts) return counts;
  const { source, told } = choice;
  const table = told ? builders[source]?.({ logs, first, notebook, told }) : null;
  if (table?.form === 'values' && choice.givenSteps) return { ...table, givenSteps: true };
  return table ?? null;
};

interface Material {
  readonly logs: readonly Series[];
  readonly first: Series;
  readonly notebook: Notebook;
  readonly told: ToldIn;
}

const builders: Readonly<Partial<Record<TableSource, (material: Material) => GraphTable>>> = {
  'day-values': ({ first, told }) => dayValueTable(first, told),
  'values-side-by-side': ({ logs, told }) => sideBySideTable(logs, told),
  'week-values': ({ first, told }) => weekValueTable(first, told),
  'hour-values': ({ first, told }) => hourValueTable(first, told),
  'each-specimen': ({ logs, told }) => eachSpecimenTable(logs, told),
  'reads-of-one': ({ first, notebook, told }) => readsOfOneTable(first, notebook, told),
  'growth-amounts': ({ logs, told }) => growthTable(logs, told),
  'rain-amounts': ({ first, told }) => rainAmountTable(first, told),
  'days-in-order': ({ logs, told }) => dayTimeTable(logs, told),
  'hours-in-order': ({ first, told }) => hourTimeTable(first, told),
};
