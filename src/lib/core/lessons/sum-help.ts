import { sumAnswer, type Sum } from './review-sum';
import { addedWithBlocks, takenFromBlocks, type BlockStep } from './sum-blocks';
import { jumpsBetween } from './sum-jumps';

/** Jumps on a number line as a child is shown them: null is a number that stays a "?". */
export interface JumpHelp {
  readonly isBack: boolean;
  /** Where it begins, and where each jump lands. */
  readonly landings: readonly (number | null)[];
  readonly sizes: readonly (number | null)[];
}

/**
 * The jumps of a sum: on from the start for what it came to, from the start to the end for the
 * change, back from the end for the start. Until it is answered, no number in it is the answer.
 * @example
 * jumpHelp({ start: 8, change: 5, result: 13, unknown: 'result' }, false) // => { isBack: false, landings: [8, 10, null], sizes: [2, 3] }
 * jumpHelp({ start: 8, change: 5, result: 13, unknown: 'change' }, false) // => { isBack: false, landings: [8, 10, 13], sizes: [null, null] }
 * jumpHelp({ start: 8, change: 5, result: 13, unknown: 'start' }, true) // => { isBack: true, landings: [13, 10, 8], sizes: [3, 2] }
 */
export const jumpHelp = (
  sum: Pick<Sum, 'start' | 'change' | 'result' | 'unknown'>,
  isAnswered: boolean,
): JumpHelp => {
  const isBack = sum.unknown === 'start';
  const [from, to] = isBack ? [sum.result, sum.start] : [sum.start, sum.result];
  const jumps = jumpsBetween(from, to);
  const answer = sumAnswer(sum);
  const shown = (number: number): number | null =>
    !isAnswered && number === answer ? null : number;
  const areHidden = sum.unknown === 'change' && !isAnswered;
  return {
    isBack,
    landings: [from, ...jumps.map((jump) => jump.to)].map(shown),
    sizes: jumps.map(({ size }) => (areHidden ? null : shown(size))),
  };
};

/**
 * The blocks of a sum: both numbers put together, or the known part taken from the whole. Until it
 * is answered it stops before the answer lies there: at the numbers laid for adding, at the last
 * block broken for taking away.
 * @example
 * blockHelp({ start: 8, change: 5, result: 13, unknown: 'result' }, false).map(({ deed }) => deed) // => ['laid']
 * blockHelp({ start: 8, change: 5, result: 13, unknown: 'change' }, false).map(({ deed }) => deed) // => ['laid', 'ten-broken']
 * blockHelp({ start: 8, change: 5, result: 13, unknown: 'change' }, true).map(({ deed }) => deed) // => ['laid', 'ten-broken', 'taken-away']
 */
export const blockHelp = (
  sum: Pick<Sum, 'start' | 'change' | 'result' | 'unknown'>,
  isAnswered: boolean,
): readonly BlockStep[] => {
  if (sum.unknown === 'result') {
    const steps = addedWithBlocks(sum.start, sum.change);
    return isAnswered ? steps : steps.slice(0, 1);
  }
  const steps = takenFromBlocks(sum.result, takenAway(sum));
  return isAnswered ? steps : steps.slice(0, -1);
};

/**
 * What is taken from the whole to find the part that is asked; nothing where both are put together.
 * @example
 * takenAway({ start: 8, change: 5, result: 13, unknown: 'change' }) // => 8
 * takenAway({ start: 8, change: 5, result: 13, unknown: 'result' }) // => 0
 */
export const takenAway = ({
  start,
  change,
  unknown,
}: Pick<Sum, 'start' | 'change' | 'result' | 'unknown'>): number =>
  unknown === 'result' ? 0 : unknown === 'change' ? start : change;
