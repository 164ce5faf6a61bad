import { daysBetween, type CivilDay } from '#core/calendar';
import type { WeatherWord } from '#core/journal';
import { exactPerUnit, markById, systemOf } from '#core/measure';
import type { PastTheCap, RainDoubt } from './doubt';
import type { DoubtCandidate } from './doubt-candidate';
import { daysBefore, type NumberHistory } from './number-history';

/** The doubts about a rain reading. Not part of the public door. */
export const rainDoubts = (
  candidate: DoubtCandidate,
  history: NumberHistory,
): readonly (RainDoubt | PastTheCap)[] => [
  ...tooMuch(candidate),
  ...asBefore(candidate, history),
  ...thoughDry(candidate, history),
];

/** More than 100 mm, or 4 in, for each day of the total. */
function tooMuch({ measured, spanDays = 1 }: DoubtCandidate): readonly (RainDoubt | PastTheCap)[] {
  const { exact, unit } = measured;
  const inInches = systemOf(unit) === 'customary';
  const capExact = spanDays * (inInches ? 4 * exactPerUnit('in') : 100 * millimetre);
  if (exact <= capExact) return [];
  const perhapsExact = Math.round((exact / exactPerUnit(unit)) * millimetre);
  const isUnitLikely = unit === 'in' || unit === 'cm';
  return isUnitLikely && perhapsExact <= spanDays * 100 * millimetre
    ? [{ kind: 'rain-unit', perhapsUnit: 'mm', perhapsExact }]
    : [{ kind: 'past-the-cap', capExact }];
}

/**
 * As much as at the reading before: was the gauge emptied? Small amounts are often alike by
 * chance, dry days always, so that only a fair amount is asked about: 2 mm and five marks, or three
 * where they are coarse. (Tried on three years of daily rain: tests/core/series/rain-doubts.test.ts)
 */
function asBefore(
  { day, measured, spanDays = 1 }: DoubtCandidate,
  history: NumberHistory,
): readonly RainDoubt[] {
  const step = markById(measured.mark).exact;
  const least = Math.max(2 * millimetre, (step > millimetre ? 3 : 5) * step);
  if (measured.exact < least) return [];
  const before = dayBefore(history, day, spanDays)?.points.at(-1);
  return before?.exact === measured.exact ? [{ kind: 'rain-as-before', before }] : [];
}

const millimetre = exactPerUnit('mm');

/**
 * Water in the gauge after dry days. It holds what fell since the reading before, so the word of
 * this morning says little alone: the day before has to be known as dry too.
 */
function thoughDry(
  { day, measured, weather, spanDays = 1 }: DoubtCandidate,
  history: NumberHistory,
): readonly RainDoubt[] {
  const weatherBefore = dayBefore(history, day, 1)?.weather ?? [];
  if (measured.exact === 0 || spanDays > 1 || !weather || weatherBefore.length === 0) return [];
  const isDry = [weather, ...weatherBefore].every((word) => dryWords.includes(word));
  return isDry ? [{ kind: 'rain-though-dry', weather }] : [];
}

/** The day with a number that lies so many days back, if there is one. */
function dayBefore(history: NumberHistory, day: CivilDay, daysBack: number) {
  const last = daysBefore(history, day).at(-1);
  return last && daysBetween(last.day, day) === daysBack ? last : null;
}

/** Under cloud and in fog a little may fall unseen. */
const dryWords: readonly WeatherWord[] = ['sun', 'wind'];
