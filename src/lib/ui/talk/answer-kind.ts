import { answerWayOf, type AskedQuestion } from '#core/questions';
import type { Telling } from './tap-places';

/** How a question is answered on this page. */
export type AnswerKind = 'number' | 'places' | 'choices' | 'order' | 'from-to';

/**
 * Which piece takes the answer of a question: days, piles, rows and bars are places of the graph,
 * where the table has at least three of them.
 */
export function answerKind(
  question: AskedQuestion,
  told: readonly Telling[],
): { readonly kind: AnswerKind; readonly most: number } {
  const { by } = answerWayOf(question);
  const isPile = question.template === 'C9' && told.length > 2;
  const isRow = question.template === 'Y8' && told.length > 2;
  if (isPile || isRow || by === 'day') return { kind: 'places', most: 1 };
  if (by === 'stretch' || question.template === 'C5') return { kind: 'places', most: 2 };
  if (by === 'days') return { kind: 'places', most: told.length };
  if (by === 'count' || by === 'length') return { kind: 'number', most: 0 };
  if (by === 'order' || by === 'from-to') return { kind: by, most: 0 };
  return { kind: 'choices', most: 0 };
}
