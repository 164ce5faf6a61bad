import type { AskedQuestion } from '#core/questions';
import { behindWords } from './behind-words';
import { betweenWords } from './between-words';
import { beyondWords } from './beyond-words';
import { readWords } from './read-words';
import { blankOf, type TemplateWords } from './template-words';

/** The question as a child reads it. */
export const questionText = (question: AskedQuestion): string =>
  wordsOf(question).ask(blankOf(question), question);

/** An easier way to come to it, for a child who is stuck. It gives no answer away. */
export const easierText = (question: AskedQuestion): string =>
  wordsOf(question).easier(blankOf(question), question);

/** A step further, for a child who wants one. */
export const stretchText = (question: AskedQuestion): string =>
  wordsOf(question).stretch(blankOf(question), question);

const everyWord = { ...readWords, ...betweenWords, ...beyondWords, ...behindWords };

const wordsOf = ({ template }: AskedQuestion): TemplateWords => {
  const words = everyWord[template];
  if (!words) throw new Error(`There are no words for ${template}`);
  return words;
};
