import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tableChoicesOf } from '#core/graphs';
import { quantities, stages, type Notebook, type Stage } from '#core/journal';
import { exactPerUnit } from '#core/measure';
import {
  chooseQuestions,
  decodeQuestion,
  judgeAnswer,
  lessonFactsOf,
  questionsOf,
  sameTold,
  type AskedQuestion,
  type LessonFacts,
  type Told,
} from '#core/questions';
import { easierText, questionText } from '#ui/ladder-words';
import { thing } from '../graphs/small-notebook';
import { randomNotebook, randomToday } from '../graphs/random-logs';

const isOwn = ({ template }: AskedQuestion): boolean => /^[RC]/.test(template);

/** Every graph that could be drawn of a notebook: for each table, as it is offered first. */
const factsIn = (notebook: Notebook, stage: Stage): readonly LessonFacts[] =>
  tableChoicesOf(notebook, { investigation: thing }, stage, randomToday).flatMap(({ variants }) =>
    variants[0].graphs.flatMap(({ graph }) => {
      const facts = lessonFactsOf(notebook, variants[0].choice, graph, stage, randomToday);
      return facts.ok ? [facts.value] : [];
    }),
  );

const everyFacts = fc
  .constantFrom(...quantities)
  .chain(randomNotebook)
  .chain((notebook) => fc.constantFrom(...stages).map((stage) => factsIn(notebook, stage)));

const numberOf = (told: Told): number | null => {
  if (told.kind === 'count') return told.count;
  return told.kind === 'length' ? told.exact / exactPerUnit(told.unit) : null;
};

/** As a whole number in a text: 3 is not in 13, and 1 not in 1 1/2. */
const isWritten = (number: number, text: string): boolean =>
  new RegExp(`(?<![\\d./]|\\d )${number}(?![\\d./]|\\d* \\d+/)`).test(text);

const largest = { G1: 20, G2a: 100, G2b: 100, G2c: 1000, G3: 1000 } as const;
const runs = { numRuns: 60, seed: 20261125 };
/** Drawn once for all of the laws: folding so many notebooks is what takes the time. */
const everySample = fc.sample(everyFacts, runs).flat();
const everyQuestion = everySample.map((facts) => ({
  facts,
  questions: questionsOf(facts).filter(isOwn),
}));
const eachQuestion = (check: (question: AskedQuestion, facts: LessonFacts) => void): number => {
  for (const { facts, questions } of everyQuestion) {
    for (const question of questions) check(question, facts);
  }
  return everyQuestion.flatMap(({ questions }) => questions).length;
};

describe('any question to read or between', () => {
  it('keeps its numbers to its range, and its range to the stage', () => {
    const found = eachQuestion(({ range, answer, blanks }, { ranges, stage }) => {
      if (!ranges.includes(range)) throw new Error(`${range} in ${stage}`);
      const numbers = [answer, ...Object.values(blanks)].flatMap((told) => numberOf(told) ?? []);
      if (numbers.some((number) => number > largest[range])) throw new Error(`${numbers}`);
      if (stage !== 'grade-3' && !numbers.every(Number.isInteger)) throw new Error(`${numbers}`);
    });
    expect(found).toBeGreaterThan(500);
  });

  it('gives no answer away, in its blanks or its words', () => {
    eachQuestion((question) => {
      const { answer, blanks } = question;
      const told = Object.values(blanks).some((blank) => sameTold(blank, answer));
      const number = numberOf(answer);
      if (told || number === 0) throw new Error(JSON.stringify(question));
      if (number === null || !Number.isInteger(number)) return;
      for (const text of [questionText(question), easierText(question)]) {
        if (isWritten(number, text)) throw new Error(`${text} ${number}`);
      }
    });
  });

  it('has slips that are neither the answer nor one another, and are named as such', () => {
    eachQuestion((question) => {
      const { answer, slips } = question;
      slips.forEach(({ told, shows }, index) => {
        const others = [answer, ...slips.slice(0, index).map((slip) => slip.told)];
        if (others.some((other) => sameTold(other, told))) {
          throw new Error(JSON.stringify(question));
        }
        const judged = judgeAnswer(question, told);
        if (judged.kind !== 'slip' || judged.slip !== shows) throw new Error(JSON.stringify(slips));
      });
    });
  });

  it('is kept and read back as it was, and its answer is right', () => {
    eachQuestion((question) => {
      const read = decodeQuestion(JSON.parse(JSON.stringify(question)));
      if (!read.ok) throw new Error(JSON.stringify(read.error));
      if (JSON.stringify(read.value.answer) !== JSON.stringify(question.answer)) {
        throw new Error(JSON.stringify(read.value));
      }
      if (judgeAnswer(question, question.answer).kind !== 'right') {
        throw new Error(JSON.stringify(question));
      }
    });
  });
});

describe('the questions chosen for a lesson', () => {
  it('are of different templates, the same for the same seed, and short only as they say', () => {
    // Every third graph: each is asked through three times here.
    for (const [seed, facts] of everySample.entries()) {
      if (seed % 3 !== 0) continue;
      const chosen = chooseQuestions(facts, seed);
      const { read, between, beyond, behind, missing } = chosen;
      const asked = [...read, ...between, ...beyond, ...behind];
      expect(new Set(asked.map(({ template }) => template)).size).toBe(asked.length);
      expect(chooseQuestions(facts, seed)).toEqual(chosen);
      const lacks = (level: string) => missing.find((each) => each.level === level)?.lacks ?? 0;
      expect(read.length + lacks('read')).toBe(2);
      expect(between.length + lacks('between')).toBe(3);
      expect(Math.min(beyond.length, 1) + lacks('beyond')).toBe(1);
      expect(beyond.length).toBeLessThanOrEqual(2);
      expect(behind.length + lacks('behind')).toBe(1);
      const hasWholeSet = questionsOf(facts).some(({ wholeSet }) => wholeSet);
      expect(asked.some(({ wholeSet }) => wholeSet)).toBe(hasWholeSet);
    }
  });
});
