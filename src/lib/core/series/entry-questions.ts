import type { CivilDay } from '#core/calendar';
import type { Measured } from '#core/measure';
import { exactPerUnit, isLengthUnit } from '#core/measure';
import type { Series } from './series';

/**
 * What is worth asking once before a line is written: facts about the entry itself, not doubts
 * about the plant. Every question can be answered with "yes", and nothing is ever refused.
 */
export type EntryQuestion =
  | { readonly kind: 'day-not-come-yet'; readonly day: CivilDay; readonly today: CivilDay }
  | { readonly kind: 'before-the-start'; readonly day: CivilDay; readonly startedOn: CivilDay }
  | { readonly kind: 'past-the-ruler'; readonly measured: Measured; readonly rulerExact: number }
  | { readonly kind: 'already-read-today'; readonly day: CivilDay; readonly readings: number };

/**
 * The length of the ruler in the house: 12 in, or 30 cm, in whole nanometres. (Common practice, no
 * source.)
 *
 * @example
 * rulerExactFor('cm') // => 300000000
 */
export const rulerExactFor = (unit: Measured['unit']): number =>
  unit === 'in' || unit === 'ft' || unit === 'yd'
    ? 12 * exactPerUnit('in')
    : 30 * exactPerUnit('cm');

/**
 * The questions about a reading before it is written, the most surprising first.
 *
 * @param measured what was read, or null for a stamp or a word
 * @example
 * questionsAboutEntry(null, '2026-03-10', '2026-03-10', { specimen: { startedOn: '2026-03-02' }, investigation: { quantity: 'plant-height' }, days: [] }) // => []
 */
export function questionsAboutEntry(
  measured: Measured | null,
  day: CivilDay,
  today: CivilDay,
  series: Series,
): readonly EntryQuestion[] {
  const questions: EntryQuestion[] = [];
  const { startedOn } = series.specimen;
  if (day > today) questions.push({ kind: 'day-not-come-yet', day, today });
  if (day < startedOn) questions.push({ kind: 'before-the-start', day, startedOn });
  if (measured && isPastTheRuler(measured, series)) {
    questions.push({ kind: 'past-the-ruler', measured, rulerExact: rulerExactFor(measured.unit) });
  }
  const readings = series.days.find((each) => each.day === day)?.readings.length ?? 0;
  if (measured && readings > 0 && !isReadManyTimesADay(series)) {
    questions.push({ kind: 'already-read-today', day, readings });
  }
  return questions;
}

/** Shadows grow longer than any ruler, and are measured with a tape. */
const isPastTheRuler = (measured: Measured, series: Series): boolean =>
  isLengthUnit(measured.unit) &&
  series.investigation.quantity !== 'shadow' &&
  measured.exact > rulerExactFor(measured.unit) &&
  !series.points.some((point) => point.exact > rulerExactFor(point.unit));

const isReadManyTimesADay = (series: Series): boolean =>
  series.investigation.quantity === 'shadow' || series.investigation.quantity === 'length';
