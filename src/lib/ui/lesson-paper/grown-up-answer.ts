import type { LessonQuestion } from '#core/lessons';
import type { AskedQuestion, Slip, Told } from '#core/questions';
import { answerText } from '#ui/ladder-words';
import { answerSpace } from './answer-space';

/** The answer as a grown-up reads it; where they judge it themselves, that is said. */
export const grownUpAnswer = (question: LessonQuestion): string => {
  if (question.kind === 'own') return question.answer;
  const { answer, level } = question.question;
  const isJudged = level === 'beyond' || answer.kind === 'idea';
  if (!isJudged) return answerText(answer);
  const said = asSentence(answerText(answer));
  return level === 'beyond'
    ? `${said} Any answer with a good reason counts.`
    : `${said} Said in any words.`;
};

/** The unit stands printed after its blank: it can not be left out there. */
export const slipsOnPaper = (question: AskedQuestion): readonly Slip[] => {
  const { blanks } = answerSpace({ kind: 'asked', question });
  const hasUnit = blanks.some(({ after }) => after !== '');
  return question.slips.filter(({ shows }) => !(hasUnit && shows === 'forgot-unit'));
};

/** A usual other answer, as a child might say it. */
export const slipSaid = (told: Told): string => answerText(told).replace(/\.$/, '');

const asSentence = (text: string): string => {
  const begun = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.!?]$/.test(begun) ? begun : `${begun}.`;
};
