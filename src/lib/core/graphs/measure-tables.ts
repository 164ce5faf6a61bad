import { changesBetween } from '#core/growth';
import type { DayState, Notebook, Reading } from '#core/journal';
import { markById, type MarkId, type Unit } from '#core/measure';
import type { Series, SeriesDay } from '#core/series';
import type { MeasureTable } from './graph-table';
import { isOfOneDay, oneDayAmount } from './one-day-amount';
import { dayLabels } from './place-labels';
import type { ToldIn } from './table-choice';
import { measuredWords } from './table-words';
import { namesOf } from './tally-tables';
import { toldValue } from './told-value';

/**
 * Each specimen once: its last reading of the days chosen. Not part of the public door.
 */
export const eachSpecimenTable = (logs: readonly Series[], told: ToldIn): MeasureTable => {
  const names = namesOf(logs);
  const found = logs.map((series, index): Found => {
    const day = series.days.findLast((each) => oneDayAmount(series, each) !== null);
    const amount = day ? oneDayAmount(series, day) : null;
    const label = names[index] as string;
    if (amount) return { label, measured: amount };
    const state = series.days.at(-1)?.state ?? 'blank';
    return { label, state: state === 'word' || state === 'number' ? 'blank' : state };
  });
  return measureTable(wordOf(logs), told, ['all of them'], [found]);
};

/** Every read of one specimen, by whom it was read. Not part of the public door. */
export const readsOfOneTable = (series: Series, notebook: Notebook, told: ToldIn): MeasureTable => {
  const reads = series.days.flatMap(({ readings }) =>
    readings.filter(isOfOneDay).flatMap((each) => readsOf(each, notebook)),
  );
  return measureTable(
    wordOf([series]),
    told,
    [series.specimen.name],
    [[...reads, ...unmeasuredIn(series.days)]],
  );
};

const readsOf = (reading: Reading, { people }: Notebook): readonly Found[] => {
  const name = reading.author === null ? undefined : people.get(reading.author)?.name;
  return reading.all.map((measured, index) => ({
    label: [name, `read ${index + 1}`].filter(Boolean).join(', '),
    measured,
  }));
};

/** How much each grew from one day to the very next, with a mark of its own. Not in the door. */
export const growthTable = (logs: readonly Series[], told: ToldIn): MeasureTable =>
  measureTable(
    'growth',
    told,
    namesOf(logs),
    logs.map((series) => {
      const points = series.points.filter(isOfOneDay);
      const changes = changesBetween(points).filter(({ gapDays }) => gapDays === 1);
      const labels = dayLabels(series.days.map(({ day }) => day));
      const labelOf = new Map(series.days.map(({ day }, index) => [day, labels[index] as string]));
      const grown = changes.map(({ to, exact, unitsMixed, from }): Found => {
        const label = labelOf.get(to.day) as string;
        // A difference of two units is no reading of either: it is left for the table to say.
        if (unitsMixed && !told.converts) return { label, state: 'blank' };
        return { label, measured: { ...to, mark: finerMark(from, to), exact } };
      });
      return [...grown, ...unmeasuredIn(series.days)];
    }),
  );

/** Rain of single days. Not part of the public door. */
export const rainAmountTable = (series: Series, told: ToldIn): MeasureTable => {
  const labels = dayLabels(series.days.map(({ day }) => day));
  const found = series.days.flatMap((day, index): readonly Found[] => {
    const label = labels[index] as string;
    const amount = oneDayAmount(series, day);
    if (amount) return [{ label, measured: amount }];
    if (day.readings.every(isOfOneDay)) {
      return unmeasuredIn([day]).map(({ state }) => ({ label, state }));
    }
    const spanDays = Math.max(...day.readings.map((reading) => reading.spanDays));
    return [{ label: `${label} (${spanDays} days together)`, state: 'blank' }];
  });
  return measureTable(wordOf([series]), told, [series.specimen.name], [found]);
};

/** A number that was found for a place of the table, or the state that stands there instead. */
type Found =
  | {
      readonly label: string;
      readonly measured: { readonly exact: number; readonly unit: Unit; readonly mark: MarkId };
    }
  | { readonly label: string; readonly state: DayState | 'blank' };

const measureTable = (
  measured: string,
  told: ToldIn,
  seriesNames: readonly string[],
  foundBySeries: readonly (readonly Found[])[],
): MeasureTable => {
  const values: MeasureTable['values'][number][] = [];
  const unmeasured: MeasureTable['unmeasured'][number][] = [];
  for (const [series, found] of foundBySeries.entries()) {
    for (const each of found) {
      const { label } = each;
      if ('state' in each) {
        unmeasured.push({ label, state: each.state });
        continue;
      }
      const { exact, unit, text } = toldValue(each.measured, told);
      // Two units share no number line: what was read in another is told, and not marked.
      if (unit !== told.unit) unmeasured.push({ label: `${label}: ${text}`, state: 'blank' });
      else values.push({ label, exact, text, series });
    }
  }
  return {
    ...{ form: 'measures', measured, unit: told.unit, mark: told.mark },
    ...{ seriesNames, values, unmeasured },
  };
};

/** Days that were planned or written for and have no number. */
const unmeasuredIn = (
  days: readonly SeriesDay[],
): readonly { readonly label: string; readonly state: DayState | 'blank' }[] => {
  const labels = dayLabels(days.map(({ day }) => day));
  return days.flatMap(({ state, planned }, index) => {
    if (state === 'number' || (!planned && (state === 'blank' || state === 'word'))) return [];
    return [{ label: labels[index] as string, state: state === 'word' ? 'blank' : state }];
  });
};

const wordOf = ([first]: readonly Series[]): string =>
  first ? measuredWords[first.investigation.quantity] : '';

const finerMark = (one: { readonly mark: MarkId }, other: { readonly mark: MarkId }): MarkId =>
  markById(one.mark).exact < markById(other.mark).exact ? one.mark : other.mark;
