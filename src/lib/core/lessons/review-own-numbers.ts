import { addDays, compareDays, type CivilDay, type ClockTime } from '#core/calendar';
import type { Investigation, Notebook, Quantity, SpecimenId } from '#core/journal';
import { exactPerUnit, type MarkId, type Unit } from '#core/measure';
import { openDoubts, seriesOf, type Series } from '#core/series';

/** A whole number that was read, fit to reckon with. Not part of the public door. */
export interface OwnNumber {
  readonly day: CivilDay;
  readonly time: ClockTime | null;
  readonly number: number;
  readonly unit: Unit;
  readonly mark: MarkId;
}

/** The numbers of one specimen, in the order of the log. Not part of the public door. */
export interface OwnNumbers {
  readonly specimen: SpecimenId;
  readonly name: string;
  readonly quantity: Quantity;
  readonly isRunning: boolean;
  readonly numbers: readonly OwnNumber[];
}

/**
 * The notebook with what was written for days through `last` only: a review is of the days before
 * it, so that today's reading does not change today's page. Not part of the public door.
 */
export const daysThrough = (notebook: Notebook, last: CivilDay): Notebook => {
  const through = <Each extends { readonly day: CivilDay }>(lines: readonly Each[]) =>
    lines.filter(({ day }) => day <= last);
  return {
    ...notebook,
    logBySpecimen: new Map(
      [...notebook.logBySpecimen].map(([id, log]) => [
        id,
        {
          readings: through(log.readings),
          dayMarks: through(log.dayMarks),
          kindNotes: through(log.kindNotes),
        },
      ]),
    ),
  };
};

/**
 * The investigations in the order their numbers are wanted: running ones first, then those whose
 * last line is the newest. Not part of the public door.
 */
export const investigationsInOrder = (notebook: Notebook): readonly Investigation[] => {
  const lastDayOf = ({ id }: Investigation): CivilDay | '' =>
    [...notebook.specimens.values()]
      .filter(({ investigation }) => investigation === id)
      .flatMap((specimen) => {
        const log = notebook.logBySpecimen.get(specimen.id);
        return [...(log?.readings ?? []), ...(log?.kindNotes ?? [])].map(({ day }) => day);
      })
      .reduce<CivilDay | ''>((latest, day) => (day > latest ? day : latest), '');
  const all = [...notebook.investigations.values()].map((each) => ({
    ...{ each, lastDay: lastDayOf(each), isRunning: each.ended === null },
  }));
  return all
    .toSorted((one, other) =>
      one.isRunning !== other.isRunning
        ? one.isRunning
          ? -1
          : 1
        : one.lastDay > other.lastDay
          ? -1
          : one.lastDay < other.lastDay
            ? 1
            : 0,
    )
    .map(({ each }) => each);
};

/** The logs of an investigation as they stand. Not part of the public door. */
export const logsOf = (
  notebook: Notebook,
  investigation: Investigation,
  today: CivilDay,
): readonly Series[] =>
  [...notebook.specimens.values()]
    .filter((specimen) => specimen.investigation === investigation.id)
    .flatMap(({ id }) => seriesOf(notebook, id, today) ?? []);

/**
 * What one log gives to reckon with: whole numbers of one reading each, that nobody doubts, that
 * were not taken back, and of one day only. A day that was read twice gives none, unless each of
 * its readings has a time of its own. Days without a number give nothing. Not in the door.
 */
export const ownNumbersOf = (
  notebook: Notebook,
  series: Series,
  others: readonly Series[],
): OwnNumbers => {
  const doubted = new Set(openDoubts(notebook, series, others).map(({ reading }) => reading.id));
  const { specimen, investigation } = series;
  const isByHour = investigation.quantity === 'shadow';
  const numbers = series.points.filter(({ day, time, spanDays, reading, exact, unit }) => {
    const sameMoment = series.points.filter(
      (other) => other.day === day && (!isByHour || other.time === time),
    );
    const isWhole = exact % exactPerUnit(unit) === 0;
    return sameMoment.length === 1 && spanDays === 1 && isWhole && !doubted.has(reading);
  });
  return {
    ...{ specimen: specimen.id, name: specimen.name, quantity: investigation.quantity },
    isRunning: investigation.ended === null && specimen.ended === null,
    numbers: numbers.map(({ day, time, exact, unit, mark }) => ({
      ...{ day, time: time ?? null, number: exact / exactPerUnit(unit), unit, mark },
    })),
  };
};

/** The latest day of a list that is not after a day. Not part of the public door. */
export const latestThrough = (days: readonly CivilDay[], last: CivilDay): CivilDay | null =>
  days
    .filter((day) => day <= last)
    .toSorted(compareDays)
    .at(-1) ?? null;

/** The day before. Not part of the public door. */
export const dayBefore = (day: CivilDay): CivilDay => addDays(day, -1);
