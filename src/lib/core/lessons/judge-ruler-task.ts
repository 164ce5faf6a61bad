import { parseMeasured, type ParseError, type WrittenOptions } from '#core/measure';
import type { RulerSlip, RulerTask } from './ruler-task';

export type RulerJudgement =
  | { readonly kind: 'right' }
  | { readonly kind: 'slip'; readonly slip: RulerSlip }
  | { readonly kind: 'other' }
  | { readonly kind: 'unreadable'; readonly error: ParseError };

/**
 * What an answer to a ruler task says: `right`, a `slip` with its name, or some `other` number,
 * about which nothing is known. Text is read in the task's unit unless it names another, so
 * `25 mm` is right where `2.5` is; text that is no reading is `unreadable`. A number is whole
 * nanometres.
 * @example
 * judgeRulerTask(offZeroTaskOf({ unit: 'in', mark: '1/2 in', begins: 203_200_000, ends: 266_700_000 }).value, '3 1/2') // => { kind: 'slip', slip: 'counted-marks' }
 */
export const judgeRulerTask = (
  task: RulerTask,
  answer: string | number,
  options: Pick<WrittenOptions, 'decimal'> = {},
): RulerJudgement => {
  if (typeof answer === 'number') return judged(task, answer);
  const read = parseMeasured(answer, { unit: task.unit, mark: task.mark, ...options });
  return read.ok ? judged(task, read.value.exact) : { kind: 'unreadable', error: read.error };
};

const judged = ({ answerExact, slips }: RulerTask, exact: number): RulerJudgement => {
  if (exact === answerExact) return { kind: 'right' };
  const found = slips.find((each) => each.exact === exact);
  return found ? { kind: 'slip', slip: found.slip } : { kind: 'other' };
};
