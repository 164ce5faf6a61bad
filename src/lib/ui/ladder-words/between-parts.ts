import { formOf, type AskedQuestion, type Told } from '#core/questions';
import { kindCountText, kindText } from './kind-text';
import type { Blank } from './template-words';
import { answerText } from './told-text';

/** Parts that questions between are said with: kinds, lists, two days or times. */
export const kind = (blank: Blank, name: string): string => kindText(blank(name), blank('counted'));

export const part = (blanks: AskedQuestion['blanks'], name: string): string => {
  const [label, count] = [blanks[name], blanks[`${name}Count`]];
  if (label?.kind !== 'word' || count?.kind !== 'count') return '';
  return kindCountText(count.count, label.word, count.of);
};

export const numberIn = (told: Told | undefined): string =>
  told?.kind === 'count' ? String(told.count) : '';

/** One thing a sentence, so that a list is not one long one. */
export const sentences = (things: Told | undefined, most?: number): string =>
  things?.kind === 'order'
    ? things.things
        .slice(0, most)
        .map((each) => `${sentenceCase(answerText(each))}.`)
        .join(' ')
    : '';

const sentenceCase = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** Five cannot be halved in whole things. */
export const hasHalves = (each: Told | undefined): boolean =>
  each?.kind === 'count' && each.count % 2 === 0;

export const muchMore = (blank: Blank, question: AskedQuestion): string => {
  const ends = `Look at ${bothEnds(question.blanks)}.`;
  const form = formOf(question);
  if (form === 'rain') return `${ends} How much more rain fell on the wetter day?`;
  if (form === 'shadow') return `${ends} How much longer is the longer shadow?`;
  const word = blank('measured') === 'height' ? 'taller' : 'longer';
  return `${ends} That is ${blank('gap')}. How much ${word} did ${blank('plant')} get?`;
};

/** As they come in time, so that nobody hears which of them is more. */
export const bothEnds = ({ less, more }: AskedQuestion['blanks']): string => {
  if (!less || !more) return '';
  const key = (told: Told): string =>
    told.kind === 'day' ? told.day : told.kind === 'time' ? told.time : '';
  const [first, last] = key(less) < key(more) ? [less, more] : [more, less];
  return `${answerText(first)} and ${answerText(last)}`;
};
