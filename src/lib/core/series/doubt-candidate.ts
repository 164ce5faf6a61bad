import type { CivilDay, ClockTime } from '#core/calendar';
import type { EntryId, Reading, WeatherWord } from '#core/journal';
import type { Measured } from '#core/measure';

/** A number that may be doubted: one just written, or one about to be. */
export interface DoubtCandidate {
  /** Its own line, where it is in the series already; it is never held against itself. */
  readonly reading?: EntryId;
  readonly day: CivilDay;
  readonly time?: ClockTime;
  readonly measured: Measured;
  /** How many days a rain total covers; 1 where nothing is said. */
  readonly spanDays?: number;
  readonly weather?: WeatherWord;
}

/**
 * A reading as a candidate: the number of it that counts.
 *
 * @example
 * candidateOf({ id: 'r', day: '2026-03-09', counted: { exact: 1 }, spanDays: 1 }) // => { reading: 'r', day: '2026-03-09', measured: { exact: 1 }, spanDays: 1 }
 */
export const candidateOf = (reading: Reading): DoubtCandidate => ({
  ...{ reading: reading.id, day: reading.day, measured: reading.counted },
  spanDays: reading.spanDays,
  ...(reading.time === undefined ? {} : { time: reading.time }),
  ...(reading.weather === undefined ? {} : { weather: reading.weather }),
});
