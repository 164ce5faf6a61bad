import type { Clock } from '#notebook';

/** A whole number by chance, from 0 to 2^31 - 1: it chooses the questions of a new lesson. */
export const newSeed = (clock: Pick<Clock, 'randomBytes'>): number =>
  clock.randomBytes(4).reduce((sum, byte) => (sum * 256 + byte) % 2 ** 31, 0);
