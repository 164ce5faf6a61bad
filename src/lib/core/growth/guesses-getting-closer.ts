import { failed, ok, type Result } from '#core/base';
import { isLengthUnit } from '#core/measure';
import {
  fewestUnitsForShares,
  guessUnitExact,
  isAnswered,
  type AnsweredEstimate,
  type EstimateOutcome,
} from '#core/series';
import { median } from './median';

export const guessesNeeded = 10;

/** How somebody's first five guesses and last five came out: for the grown-up's page. */
export interface GuessesCloser {
  /** How many guesses were answered in all. */
  readonly answered: number;
  /** The middle miss of the first five and of the last five, as a share of what was read. */
  readonly firstShare: number;
  readonly lastShare: number;
  /** The same as lengths or counts; null when the guesses were of both kinds. */
  readonly firstMissExact: number | null;
  readonly lastMissExact: number | null;
  readonly forChild: 'closer' | 'not-yet';
}

/**
 * Whether somebody's guesses are getting closer: the median miss of the last five answered guesses
 * against that of the first five (common practice, no source). Misses are held against each other
 * as shares of what was read, because later things are often longer; of a reading below 5 units
 * the share is taken of 5 units, as such a miss is judged in units. Guesses that were not measured
 * are passed over. For a grown-up; a child is told `guessesForChild`.
 * Error: `too-few` answered guesses, so that first and last five are different ones.
 *
 * @param outcomes the guesses of one person, oldest first (estimatesBy)
 * @example
 * guessesGettingCloser([]) // => { ok: false, error: { kind: 'too-few', have: 0, need: 10 } }
 */
export const guessesGettingCloser = (
  outcomes: readonly EstimateOutcome[],
): Result<
  GuessesCloser,
  { readonly kind: 'too-few'; readonly have: number; readonly need: 10 }
> => {
  const answered = outcomes.filter(isAnswered);
  if (answered.length < guessesNeeded) {
    return failed({ kind: 'too-few', have: answered.length, need: guessesNeeded });
  }
  const first = answered.slice(0, groupSize);
  const last = answered.slice(-groupSize);
  const firstShare = middle(first.map(shareOf));
  const lastShare = middle(last.map(shareOf));
  const isOneKind =
    new Set([...first, ...last].map(({ reading }) => isLengthUnit(reading.counted.unit))).size ===
    1;
  return ok({
    answered: answered.length,
    firstShare,
    lastShare,
    firstMissExact: isOneKind ? middle(first.map(missExactOf)) : null,
    lastMissExact: isOneKind ? middle(last.map(missExactOf)) : null,
    forChild: lastShare < firstShare ? 'closer' : 'not-yet',
  });
};

/**
 * What a child is told about the same guesses: no numbers, and too few guesses are not yet closer.
 * @example
 * guessesForChild([]) // => 'not-yet'
 */
export const guessesForChild = (outcomes: readonly EstimateOutcome[]): 'closer' | 'not-yet' => {
  const closer = guessesGettingCloser(outcomes);
  return closer.ok ? closer.value.forChild : 'not-yet';
};

const groupSize = 5;

const missExactOf = ({ missExact }: AnsweredEstimate): number => Math.abs(missExact);

const shareOf = (answered: AnsweredEstimate): number => {
  const { counted } = answered.reading;
  const leastExact = fewestUnitsForShares * guessUnitExact(counted);
  return missExactOf(answered) / Math.max(counted.exact, leastExact);
};

/** Five finite numbers always have a median. */
const middle = (values: readonly number[]): number => {
  const found = median(values);
  if (!found.ok) throw new Error(`No median of five misses: ${found.error.kind}`);
  return found.value;
};
