import type { AskedQuestion, NumberRange, Told } from '#core/questions';
import { answerText, easierText, questionText } from '#ui/ladder-words';
import { answersBehind } from './answers-behind';
import { answersBetween } from './answers-between';
import { answersBeyond } from './answers-beyond';
import { answersRead, type Answerer } from './answers-read';
import type { RawAsking } from './raw-asking';
import { kindsShown } from './raw-tables';
import { slipsMeantOtherwise } from './slip-meaning';
import { inUnitsOf, said, type Length, type Sum } from './reckoned';

const answerers: Readonly<Record<AskedQuestion['template'], Answerer>> = {
  ...{ ...answersRead, ...answersBetween, ...answersBeyond, ...answersBehind },
};

/** Everything that is amiss with a question, by the entries alone; nothing when all is well. */
export const wrongIn = (asking: RawAsking, question: AskedQuestion): readonly string[] => {
  const { wrong, sums } = answerers[question.template](asking, question);
  return [
    ...wrong,
    ...wrongRange(asking, question, sums),
    ...wrongNumbers(asking, question),
    ...wrongSlips(question),
    ...slipsMeantOtherwise(question, sums),
    ...givenAway(question),
    ...tooManyKinds(asking),
  ];
};

const most: Readonly<Record<NumberRange, number>> = {
  ...{ G1: 20, G2a: 100, G2b: 100, G2c: 1000, G3: 1000 },
};

/** The ranges of the stage, the narrower first; up to 1000 in grade 2 only with what can be laid. */
const rangesOf = ({ stage, log, told }: RawAsking): readonly NumberRange[] => {
  if (stage === 'grade-1') return ['G1'];
  if (stage === 'grade-3') return ['G3'];
  const hasModel = told?.unit === 'mm' || (log.quantity === 'shadow' && told?.unit === 'cm');
  return hasModel ? ['G2a', 'G2b', 'G2c'] : ['G2a', 'G2b'];
};

const firstGrade: Readonly<Record<string, string>> = {
  ...{ R5: '2', R6: '2', R7: '2', R9: '2', R10: '2', C5: '2', C7: '2', C8: '2', C9: '2' },
  ...{ C10: '2', C11: '2', C12: '2b', C13: '2', C14: '3', Y2: '2', Y4: '2', Y5: '3', Y6: '2' },
  ...{ Y7: '2', Y8: '2', Y10: '3', H3: '2', H4: '2', H5: '2', H6: '2', H7: '2', H8: '2', H9: '2' },
};

/** The narrowest range of the stage that holds every sum is the one that is said. */
const wrongRange = (
  asking: RawAsking,
  { template, range }: AskedQuestion,
  sums: readonly Sum[],
): readonly string[] => {
  const first = firstGrade[template] ?? '1';
  const allowed = rangesOf(asking).filter(
    (each) => each.slice(1, 2) >= first.slice(0, 1) && !(first === '2b' && each === 'G2a'),
  );
  const right = allowed.find((each) => sums.every((sum) => fits(sum, each)));
  if (template === 'C3' && asking.stage === 'grade-3') return ['asked beyond its grades'];
  return right === range ? [] : [`said to be ${range}, is ${right ?? 'none of this stage'}`];
};

const fits = ({ kind, numbers }: Sum, range: NumberRange): boolean => {
  const [one = 0, other = 0] = numbers;
  const total = numbers.reduce((sum, each) => sum + each, 0);
  const ones = numbers.reduce((sum, each) => sum + (each % 10), 0);
  const isIn = (number: number): boolean => number >= 0 && number <= most[range];
  const areWhole = numbers.every(Number.isInteger);
  if (!numbers.every(isIn)) return false;
  if (kind === 'read') return areWhole || range === 'G3';
  if (!areWhole) return false;
  if (kind === 'less') return range !== 'G2a' || one % 10 >= other % 10;
  if (kind === 'more') return isIn(total) && (range !== 'G2a' || ones < 10);
  return one <= 100;
};

const numbersIn = (told: Told): readonly number[] => {
  if (told.kind === 'count') return [told.count];
  if (told.kind === 'length') return [inUnitsOf(told)];
  if (told.kind === 'between') return [...numbersIn(told.low), ...numbersIn(told.high)];
  return told.kind === 'order' ? told.things.flatMap(numbersIn) : [];
};

const lengthsIn = (told: Told): readonly Length[] => {
  if (told.kind === 'length') return [told];
  if (told.kind === 'between') return [...lengthsIn(told.low), ...lengthsIn(told.high)];
  return told.kind === 'order' ? told.things.flatMap(lengthsIn) : [];
};

/** Halves and quarters of an inch, a foot or a yard, in grade 3: no other parts, and no decimals. */
const isPartSaid = ({ stage }: RawAsking, length: Length): boolean => {
  const number = inUnitsOf(length);
  const isInches = ['in', 'ft', 'yd'].includes(length.unit);
  return Number.isInteger(number) || (stage === 'grade-3' && isInches && (number * 4) % 1 === 0);
};

/** Every number anybody says stays in the stage. */
const wrongNumbers = (asking: RawAsking, question: AskedQuestion): readonly string[] => {
  const { blanks, answer, slips } = question;
  const told = [...Object.values(blanks), answer, ...slips.map((slip) => slip.told)];
  const numbers = told.flatMap(numbersIn);
  const limit = most[rangesOf(asking).at(-1)!];
  const inParts = told.flatMap(lengthsIn).filter((each) => !isPartSaid(asking, each));
  return [
    ...numbers
      .filter((number) => number < 0 || number > limit)
      .map((number) => `${number} is not of this stage`),
    ...inParts.map((each) => `${inUnitsOf(each)} ${each.unit} is said in parts`),
  ];
};

const wrongSlips = ({ answer, slips }: AskedQuestion): readonly string[] => {
  const texts = slips.map(({ told }) => said(told));
  return [
    ...(texts.includes(said(answer)) ? ['a slip that is the answer'] : []),
    ...(new Set(texts).size < texts.length ? ['two slips alike'] : []),
  ];
};

/** The answer is not nothing, and stands nowhere in the words. */
const givenAway = (question: AskedQuestion): readonly string[] => {
  const { template, answer } = question;
  const found: string[] = [];
  const number = answer.kind === 'count' || answer.kind === 'length' ? numbersIn(answer)[0]! : null;
  if (number === 0) found.push('the answer is 0');
  const texts = partsOf(answer).map(answerText);
  for (const words of [questionText(question), easierText(question)]) {
    const isTold = texts.some((text) => text !== '' && stands(text, words));
    if (template !== 'H9' && isTold) found.push(`told in: ${words}`);
    if (number !== null && numbersWrittenIn(words).includes(number)) {
      found.push(`${number} is written in: ${words}`);
    }
  }
  return found;
};

/** An answer, and whatever in it would give it away: its ends, and each of its days. */
const partsOf = (answer: Told): readonly Told[] => {
  if (answer.kind === 'between') return [answer, answer.low, answer.high];
  if (answer.kind === 'days') return answer.days.map((day) => ({ kind: 'day', day }));
  if (answer.kind !== 'interval') return [answer];
  return [answer.from, answer.to].map((day) => ({ kind: 'day', day }));
};

/** Not as a part of another word or number. */
const stands = (text: string, words: string): boolean => {
  const at = words.toLowerCase().indexOf(text.toLowerCase());
  if (at < 0) return false;
  const [before = ' ', after = ' '] = [words[at - 1], words[at + text.length]];
  return !/[\p{L}\d/.]/u.test(before) && !/[\p{L}\d/]/u.test(after);
};

/** 3, 1 1/2 and 0.5; an hour and its minutes apart. */
const numbersWrittenIn = (words: string): readonly number[] =>
  [...words.matchAll(/(?:(\d+) )?(\d+)\/(\d+)|\d+(?:\.\d+)?/g)].map(([all, whole, top, bottom]) =>
    top ? Number(whole ?? 0) + Number(top) / Number(bottom) : Number(all),
  );

const tooManyKinds = (asking: RawAsking): readonly string[] => {
  if (asking.told !== null) return [];
  const cap = { 'grade-1': 3, 'grade-2': 4, 'grade-3': 8 }[asking.stage];
  return kindsShown(asking).length > cap ? ['more kinds than the stage has'] : [];
};
