import type { CivilDay } from '#core/calendar';
import { middleReading, type EntryId, type PersonId, type Reading } from '#core/journal';
import type { Measured, Unit } from '#core/measure';
import type { Series, SeriesDay } from './series';

/** What several people read of one thing on one day. */
export interface SpreadOfDay {
  readonly day: CivilDay;
  readonly unit: Unit;
  /** The last reading of each person, the smallest number first. */
  readonly readings: readonly Reading[];
  readonly smallest: Measured;
  readonly largest: Measured;
  /** A number that was read: of an even number, the lower of the two in the middle. */
  readonly middle: Measured;
  /** The largest less the smallest, exact. */
  readonly spreadExact: number;
}

/**
 * What two people or more read on a day, or null while fewer did. Only readings in one unit are
 * laid side by side: the unit most people read in, of several the one that was read first. Of a
 * person who read again, the last reading counts; each that nobody signed is taken for a person's own. Null
 * for rain, which is emptied and adds up, and for shadows, which move.
 *
 * @example
 * spreadOfDay({ specimen: {}, investigation: { quantity: 'plant-height' }, days: [], points: [] }, '2026-03-09') // => null
 */
export function spreadOfDay(series: Series, day: CivilDay): SpreadOfDay | null {
  const found = series.days.find((each) => each.day === day);
  return found ? spreadOf(series, found) : null;
}

/**
 * Every day that two people or more read, in order.
 *
 * @example
 * daysReadByMany({ specimen: {}, investigation: { quantity: 'plant-height' }, days: [], points: [] }) // => []
 */
export const daysReadByMany = (series: Series): readonly SpreadOfDay[] =>
  series.days.flatMap((day) => spreadOf(series, day) ?? []);

function spreadOf({ investigation }: Series, { day, readings }: SeriesDay): SpreadOfDay | null {
  const { quantity } = investigation;
  if (readings.length < 2 || quantity === 'rain' || quantity === 'shadow') return null;
  const side = mostOf([...byUnit(readings).values()].map(lastOfEach));
  const inOrder = [...side].sort((left, right) => left.counted.exact - right.counted.exact);
  const [first, ...more] = inOrder.map(({ counted }) => counted);
  const largest = more.at(-1);
  if (!first || !largest) return null;
  const middle = middleReading([first, ...more]);
  const spreadExact = largest.exact - first.exact;
  return {
    day,
    unit: first.unit,
    readings: inOrder,
    smallest: first,
    largest,
    middle,
    spreadExact,
  };
}

function byUnit(readings: readonly Reading[]): ReadonlyMap<Unit, readonly Reading[]> {
  const groups = new Map<Unit, Reading[]>();
  for (const reading of readings) {
    const known = groups.get(reading.counted.unit);
    if (known) known.push(reading);
    else groups.set(reading.counted.unit, [reading]);
  }
  return groups;
}

/** The last written reading of each person, and every one that nobody signed. */
function lastOfEach(readings: readonly Reading[]): readonly Reading[] {
  const lastByAuthor = new Map<PersonId | EntryId, Reading>();
  for (const reading of readings) {
    const whose = reading.author ?? reading.id;
    const known = lastByAuthor.get(whose);
    if (!known || known.at < reading.at) lastByAuthor.set(whose, reading);
  }
  return [...lastByAuthor.values()];
}

const mostOf = (groups: readonly (readonly Reading[])[]): readonly Reading[] =>
  groups.reduce((most, group) => (group.length > most.length ? group : most), []);
