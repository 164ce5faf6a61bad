import { exactPerUnit } from '#core/measure';
import type { RulerPair } from './ruler-pairs';

/** What the last pairs tell about where counting began. A reason for a lesson, never to correct. */
export type StartAtOne =
  | { readonly kind: 'too-few'; readonly have: number; readonly need: 5 }
  | {
      readonly kind: 'fine' | 'counted-from-one';
      /** The mean of the differences, in nanometres. */
      readonly meanExact: number;
      readonly pairs: readonly RulerPair[];
    };

/**
 * Whether both sides of the ruler seem to be counted from 1: the metric side is then short of the
 * inches by 1.54 cm (one inch too much against one centimetre too much). The mean of the last five
 * pairs, held against -0.8 cm. A pair much further apart than counting from 1 can bring about (by
 * more than two windows of agreement) has another reason, and is passed over. Where zero is not the edge, both sides shift alike, and
 * nothing is seen here.
 *
 * @param pairs in order (rulerPairs), best of one child
 * @example
 * startAtOneSignal([]) // => { kind: 'too-few', have: 0, need: 5 }
 */
export function startAtOneSignal(pairs: readonly RulerPair[]): StartAtOne {
  const telling = pairs.filter(isTelling);
  const last = telling.slice(-pairsNeeded);
  if (last.length < pairsNeeded) return { kind: 'too-few', have: last.length, need: pairsNeeded };
  const meanExact = last.reduce((sum, pair) => sum + pair.differenceExact, 0) / pairsNeeded;
  const kind = meanExact < thresholdExact ? 'counted-from-one' : 'fine';
  return { kind, meanExact, pairs: last };
}

const pairsNeeded = 5;
const thresholdExact = -0.8 * exactPerUnit('cm');
const oneTooManyExact = exactPerUnit('in') - exactPerUnit('cm');

const isTelling = ({ differenceExact, windowExact }: RulerPair): boolean =>
  differenceExact <= 2 * windowExact && differenceExact >= -2 * windowExact - oneTooManyExact;
