import type { ReviewTask } from '#core/lessons';
import { formatExact } from '#core/measure';
import { answerText } from '#ui/ladder-words';
import { sumAnswerText } from './story-words';

/** The answer of an item, with its unit. */
export const answerOf = (task: ReviewTask): string => {
  if (task.of === 'sum') return sumAnswerText(task.sum);
  if (task.of === 'question') return answerText(task.question.answer);
  return formatExact(task.ruler.answerExact, task.ruler.unit, task.ruler.mark);
};
