import { isGraphKind } from '#ui/graph-words';
import type { LessonQuestion } from '#core/lessons';
import type { Stage } from '#core/journal';
import { flawedPractice, type FlawedPractice } from '#core/questions';

/** The made-up graph with a flaw that a question is about; null where it is about the log. */
export const practiceOf = (question: LessonQuestion, stage: Stage): FlawedPractice | null => {
  if (question.kind === 'own' || question.question.template !== 'H6') return null;
  const { practice, seed } = question.question.blanks;
  if (practice?.kind !== 'word' || seed?.kind !== 'count' || !isGraphKind(practice.word))
    return null;
  return flawedPractice(practice.word, stage, seed.count);
};
