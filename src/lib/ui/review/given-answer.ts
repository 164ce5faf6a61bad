import { judgeRulerTask, judgeSum, type ReviewTask } from '#core/lessons';
import { exactPerUnit, formatExact, parseMeasured, type MarkId, type Unit } from '#core/measure';
import { judgeAnswer, type Told } from '#core/questions';
import { answerText, easierText } from '#ui/ladder-words';
import { otherNumberWords, slipWords, twoNumbersHints } from '#ui/ruler-lessons';
import { parseErrorWords } from '#ui/words';
import { otherSumWords, sumHelpWords } from './review-words';
import { amountText } from './story-words';

/** What an answer turned out to be, in words for the screen; `said` is what the journal keeps. */
export type GivenAnswer =
  | { readonly kind: 'unreadable'; readonly text: string }
  | { readonly kind: 'right'; readonly said: string }
  | { readonly kind: 'not-yet'; readonly said: string; readonly help: string };

/** The unit and mark a written answer is read in; null where one is chosen. */
export const writtenIn = (
  task: ReviewTask,
): { readonly unit: Unit; readonly mark: MarkId } | null => {
  if (task.of === 'ruler') return { unit: task.ruler.unit, mark: task.ruler.mark };
  if (task.of === 'sum') return { unit: task.sum.unit, mark: wholeMarks[task.sum.unit] };
  const { answer } = task.question;
  if (answer.kind === 'length') return { unit: answer.unit, mark: answer.mark };
  return answer.kind === 'count' ? { unit: 'count', mark: '1' } : null;
};

/** Holds a written number against an item. */
export function judgeWritten(task: ReviewTask, text: string): GivenAnswer {
  const how = writtenIn(task);
  if (!how) throw new Error('This item is answered by choosing');
  const read = parseMeasured(text, how);
  if (!read.ok) return { kind: 'unreadable', text: parseErrorWords(read.error) };
  const { exact } = read.value;
  const number = exact / exactPerUnit(how.unit);
  if (task.of === 'ruler') {
    const judged = judgeRulerTask(task.ruler, exact);
    const said = formatExact(exact, how.unit, how.mark);
    if (judged.kind === 'right') return { kind: 'right', said };
    const other = task.ruler.kind === 'off-zero' ? otherNumberWords : twoNumbersHints;
    const help = judged.kind === 'slip' ? slipWords[judged.slip].hints[0] : other[0];
    return { kind: 'not-yet', said, help };
  }
  if (task.of === 'sum') {
    const judged = judgeSum(task.sum, number);
    const said = amountText(number, how.unit);
    if (judged.kind === 'right') return { kind: 'right', said };
    const help =
      judged.kind === 'slip' ? sumHelpWords[judged.slip] : otherSumWords[task.sum.unknown];
    return { kind: 'not-yet', said, help };
  }
  const { answer } = task.question;
  return judgeTold(
    task,
    answer.kind === 'count'
      ? { kind: 'count', count: number, of: answer.of }
      : { kind: 'length', exact, ...how },
  );
}

/** Holds a chosen or written answer against a question. */
export function judgeTold(task: Extract<ReviewTask, { of: 'question' }>, told: Told): GivenAnswer {
  const said = answerText(told);
  if (judgeAnswer(task.question, told).kind === 'right') return { kind: 'right', said };
  return { kind: 'not-yet', said, help: easierText(task.question) };
}

/** Sums are of whole numbers. */
const wholeMarks: Readonly<Record<Unit, MarkId>> = {
  ...{ in: '1 in', ft: '1 ft', yd: '1 ft', mm: '1 mm', cm: '1 cm', m: '1 m', count: '1' },
};
