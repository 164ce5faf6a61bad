import { describe, expect, it } from 'vitest';
import {
  chooseQuestions,
  isTelling,
  questionsOf,
  type AskedQuestion,
  type LessonFacts,
  type Told,
} from '#core/questions';
import { factsOf, kinds } from './facts-of-lines';
import { sampleLessons } from './lessons-of-sample';

const seeds = Array.from({ length: 20 }, (_, index) => index + 1);
const chosenOf = (facts: LessonFacts, seed: number): readonly AskedQuestion[] => {
  const { read, between, beyond, behind } = chooseQuestions(facts, seed);
  return [...read, ...between, ...beyond, ...behind];
};
/** The days and times that a question names. */
const whenIn = ({ blanks }: AskedQuestion): readonly string[] =>
  Object.values(blanks).flatMap((told: Told) =>
    told.kind === 'day' ? [told.day as string] : told.kind === 'time' ? [told.time as string] : [],
  );

describe.each(Object.entries(sampleLessons))('the questions chosen of %s', (_name, facts) => {
  const sets = seeds.map((seed) => chosenOf(facts, seed));

  it('are not three about the same two days', () => {
    for (const set of sets) {
      const pairs = set.map((each) => whenIn(each).toSorted().join(' ')).filter(Boolean);
      for (const pair of pairs) {
        expect(pairs.filter((each) => each === pair).length).toBeLessThanOrEqual(2);
      }
    }
  });

  it('do not tell one another', () => {
    for (const set of sets) {
      for (const one of set) {
        for (const other of set) {
          if (one !== other && isTelling(one, other)) throw new Error(JSON.stringify([one, other]));
        }
      }
    }
  });

  it('have one about the whole of our own numbers where there is such a one', () => {
    const isPossible = questionsOf(facts).some(({ wholeSet }) => wholeSet);
    for (const set of sets) {
      expect(set.some(({ wholeSet }) => wholeSet)).toBe(isPossible);
      expect(set.filter(({ template }) => template === 'H6').some((each) => each.wholeSet)).toBe(
        false,
      );
    }
  });

  it('differ from seed to seed, and not from one time to the next', () => {
    const written = sets.map((set) => JSON.stringify(set));
    expect(new Set(written).size).toBeGreaterThan(seeds.length / 2);
    expect(JSON.stringify(chosenOf(facts, 7))).toBe(written[6]);
  });
});

describe('the questions chosen', () => {
  it('name every kind that there is, rather than one pair again and again', () => {
    const facts = factsOf(kinds({ sun: 9, cloud: 6, rain: 4 }), {
      ...({ source: 'kind-days', graph: 'bar-graph' } as const),
    });
    for (const seed of seeds) {
      const said = JSON.stringify(chosenOf(facts, seed).map(({ blanks }) => blanks));
      for (const kind of ['sun', 'cloud', 'rain']) expect(said).toContain(`"${kind}"`);
    }
  });

  it('do not name a missed day where the missed days are asked for', () => {
    const facts = sampleLessons['window-bean-bars-grade-2']!;
    for (const seed of seeds) {
      const ids = chosenOf(facts, seed).map(({ template }) => template);
      if (ids.includes('R8')) expect(ids).not.toContain('Y2');
    }
  });
});
