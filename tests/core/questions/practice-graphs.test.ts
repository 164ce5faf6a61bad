import { describe, expect, it } from 'vitest';
import { graphKinds, lookAtDrawing } from '#core/graphs';
import { stages } from '#core/journal';
import { flawedPractice, practiceAskedAbout } from '#core/questions';
import { handBook, oneADay } from './hand-journal';
import { askedOn, ideaOf } from './hand-facts';

const bean = handBook({ Bean: oneADay([1, 2, 3, 4]) }, { where: 'From the soil.' });

describe('H6, what could trick a reader', () => {
  it('is about practice graphs in which the look finds the planted flaw first', () => {
    for (const kind of graphKinds) {
      for (const stage of stages) {
        for (const seed of [1, 2, 3, 4, 5, 99]) {
          const made = flawedPractice(kind, stage, seed);
          expect(made.isPractice).toBe(true);
          const look = lookAtDrawing(made.right, made.drawing);
          expect(
            look.mistakes.map(({ id }) => id),
            `${kind} ${stage} ${seed}`,
          ).toEqual([made.flaw]);
          expect(flawedPractice(kind, stage, seed)).toEqual(made);
          expect(made.table).toEqual(made.right.table);
        }
      }
    }
  });
  it('is asked once, and the practice graph is made of the question alone', () => {
    // The table ends on 31 March: 1 and the rest of 31 by 5 make the second practice graph.
    const [question, ...more] = askedOn('H6', bean, { on: 6 });
    expect(more).toEqual([]);
    expect(question?.answer).toEqual(ideaOf('flaw-T6'));
    expect(question && practiceAskedAbout(question)).toEqual(
      flawedPractice('line-graph', 'grade-2', 2),
    );
  });
  it('is withdrawn in grade 1; no other question has a practice graph', () => {
    expect(askedOn('H6', bean, { on: 6, stage: 'grade-1' })).toEqual([]);
    const [other] = askedOn('H1', bean, { on: 6 });
    expect(other && practiceAskedAbout(other)).toBeNull();
  });
});

describe('a practice graph of no known kind', () => {
  it('is none, and no error', () => {
    const [question] = askedOn('H6', bean, { on: 6 });
    const blanks = { ...question!.blanks, practice: { kind: 'word', word: 'pie' } } as const;
    expect(practiceAskedAbout({ blanks })).toBeNull();
  });
});
