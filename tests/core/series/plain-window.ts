import { daysBetween } from '#core/calendar';
import { exactPerUnit, markById, systemOf } from '#core/measure';
import type { SimulatedReading } from './simulated-plants';

/**
 * The window that doubts began with, to measure the one in use against: from the last number less
 * 1.5 cm up to the last and, for each day since, 2 cm or twice the median of the last three
 * growths per day, and 1.5 cm (in inches 0.6, 0.8 and 0.6). Beside it, the rule that a shrink of
 * one unit is never asked about.
 */
export function isOutsidePlainWindow(
  before: readonly SimulatedReading[],
  { day, measured }: Pick<SimulatedReading, 'day' | 'measured'>,
): boolean {
  const last = before.at(-1);
  if (!last || before.length < 2) return false;
  const inInches = systemOf(measured.unit) === 'customary';
  const unit = exactPerUnit(inInches ? 'in' : 'cm');
  const [slack, perDay] = inInches ? [0.6 * unit, 0.8 * unit] : [1.5 * unit, 2 * unit];
  const growths = before.slice(-3).flatMap((reading, index, recent) => {
    const earlier = index === 0 ? before.at(-1 - recent.length) : recent[index - 1];
    if (!earlier) return [];
    return [
      (reading.measured.exact - earlier.measured.exact) / daysBetween(earlier.day, reading.day),
    ];
  });
  const growth = Math.max(0, medianOf(growths));
  const high =
    last.measured.exact + daysBetween(last.day, day) * Math.max(perDay, 2 * growth) + slack;
  const oneUnit = Math.max(exactPerUnit('cm'), markById(measured.mark).exact);
  const low = last.measured.exact - Math.max(slack, oneUnit);
  return measured.exact < low || measured.exact > high;
}

function medianOf(values: readonly number[]): number {
  const inOrder = [...values].sort((one, other) => one - other);
  const half = inOrder.length >> 1;
  return inOrder.length % 2 ? inOrder[half]! : (inOrder[half - 1]! + inOrder[half]!) / 2;
}
