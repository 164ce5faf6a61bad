import { middleReading } from '#core/journal';
import type { Measured } from '#core/measure';
import type { ReadingRow } from './row-content';

/** The reading of a row that counts: the middle one, where several were taken at once. */
export const countedOf = ({ measured, again = [] }: ReadingRow): Measured =>
  middleReading([measured, ...again]);
