import type { LessonQuestion } from '#core/lessons';
import { questionText } from '#ui/ladder-words';
import { answerSpace } from './answer-space';

/** A question as a child reads it on paper: what can be ringed stands by itself, under it. */
export const childText = (question: LessonQuestion): string => {
  if (question.kind === 'own') return question.text;
  const text = questionText(question.question);
  const { choices } = answerSpace(question);
  const offered = choices.join(' ');
  return offered !== '' && text.endsWith(offered) ? text.slice(0, -offered.length).trimEnd() : text;
};
