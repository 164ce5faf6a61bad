import type { CivilDay } from '#core/calendar';
import type { RulerCheck } from '#core/journal';

/** What is known of the ruler's zero: whether it touches the table when the ruler stands on it. */
export type ZeroCheck =
  | { readonly kind: 'not-checked' }
  | { readonly kind: 'zero-at-edge'; readonly day: CivilDay }
  | { readonly kind: 'dead-zone'; readonly day: CivilDay; readonly fixes: readonly ZeroFix[] };

/**
 * What helps with a dead zone, the easiest first: cut a paper strip to the height and measure the
 * strip, take a ruler whose zero is at its edge, or trim the edge off.
 */
export const zeroFixes = ['strip-first', 'zero-at-edge-ruler', 'trim'] as const;
export type ZeroFix = (typeof zeroFixes)[number];

/**
 * What the newest check that counts says of the ruler. On many rulers zero is not the edge: such
 * a dead zone makes every height short by the same few millimetres, on both sides of the ruler, so
 * that no reading shows it; it has to be asked for (common practice, no source). The newest is the
 * one of the latest day, and of one day the last written.
 * @example
 * zeroCheck([]) // => { kind: 'not-checked' }
 * zeroCheck([{ day: '2026-03-02', takenBack: null, zeroAtEdge: false }]) // => { kind: 'dead-zone', day: '2026-03-02', fixes: ['strip-first', 'zero-at-edge-ruler', 'trim'] }
 */
export const zeroCheck = (
  checks: readonly Pick<RulerCheck, 'day' | 'takenBack' | 'zeroAtEdge'>[],
): ZeroCheck => {
  const newest = checks
    .filter(({ takenBack }) => takenBack === null)
    .reduce<(typeof checks)[number] | null>(
      (latest, each) => (latest && latest.day > each.day ? latest : each),
      null,
    );
  if (!newest) return { kind: 'not-checked' };
  const { day } = newest;
  return newest.zeroAtEdge
    ? { kind: 'zero-at-edge', day }
    : { kind: 'dead-zone', day, fixes: zeroFixes };
};
