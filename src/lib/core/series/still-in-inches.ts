import { daysBetween } from '#core/calendar';
import type { RulerPair } from './ruler-pairs';

/** Two pairs next to each other: the inch number stayed, and the plant grew. */
export interface StillInInches {
  readonly from: RulerPair;
  readonly to: RulerPair;
  readonly grewExact: number;
  readonly gapDays: number;
}

/**
 * The neighbouring pairs whose inches stayed the same while the centimetres grew: "did the plant
 * stop?" Pairs that do not agree are passed over, they would tell of a slip.
 *
 * @example
 * stillInInches([]) // => []
 */
export const stillInInches = (pairs: readonly RulerPair[]): readonly StillInInches[] => {
  const agreeing = pairs.filter(({ agrees }) => agrees);
  return agreeing.slice(1).flatMap((to, index) => {
    const from = agreeing[index]!;
    const grewExact = to.metric.exact - from.metric.exact;
    const gapDays = daysBetween(from.day, to.day);
    const stayed = to.customary.exact === from.customary.exact;
    return stayed && grewExact > 0 && gapDays > 0 ? [{ from, to, grewExact, gapDays }] : [];
  });
};
