import { describe, expect, it } from 'vitest';
import type { EntryDraft } from '#core/journal';
import { answerText, questionText } from '#ui/ladder-words';
import { child, read } from '../journal/entries';
import { handBook, oneADay } from './hand-journal';
import { askedOn, dayOf, ideaOf, lengthOf, spanOf } from './hand-facts';

/** One centimetre a day from 2 to 9 March. */
const steady = [1, 2, 3, 4, 5, 6, 7, 8];
const ninth = { on: 9 } as const;

describe('Y1, how tall next time', () => {
  // Accepted: the last number, to it and twice the growth of late for each day ahead (common
  // practice, no source).
  it.each([
    // 8 cm on the 9th, 1 cm a day: 8 to 8 + 1 x 2 x 1.
    [steady, 9, 10, [8, 10]],
    // The steps of late are 2, 2, 2: 14 to 14 + 1 x 2 x 2.
    [[1, 2, 4, 6, 8, 10, 12, 14], 9, 10, [14, 18]],
    // Of the steps 1, 3, 2 the middle one is 2: 13 to 13 + 1 x 2 x 2.
    [[1, 3, 5, 6, 7, 8, 11, 13], 9, 10, [13, 17]],
    // Asked on the 10th for the 11th, two days after the 9th: 8 to 8 + 2 x 2 x 1.
    [steady, 10, 11, [8, 12]],
  ] as const)(
    'of %j on %i March is in the span that a hand works out',
    (values, on, next, ends) => {
      const [question, ...more] = askedOn('Y1', handBook({ Bean: oneADay(values) }), { on });
      expect(question?.blanks['day']).toEqual(dayOf(next));
      expect(question?.answer).toEqual(spanOf(lengthOf(ends[0]), lengthOf(ends[1])));
      expect(more).toEqual([]);
    },
  );

  it('is withdrawn below five readings and below seven days', () => {
    const four = handBook({ Bean: oneADay([1, null, null, 4, null, null, 7, 8]) });
    const sixDays = handBook({ Bean: oneADay(steady.slice(0, 7)) });
    expect(askedOn('Y1', four, ninth)).toEqual([]);
    expect(askedOn('Y1', sixDays, { on: 8 })).toEqual([]);
  });
  it('is withdrawn when nothing grew, four days after the last number, and while one is doubted', () => {
    expect(askedOn('Y1', handBook({ Bean: oneADay(Array(8).fill(8)) }), ninth)).toEqual([]);
    expect(askedOn('Y1', handBook({ Bean: oneADay(steady) }), { on: 12 })).toEqual([]);
    const slip = handBook({ Bean: oneADay([1, 2, 3, 4, 5, 6, 7, 80]) });
    expect(askedOn('Y1', slip, ninth)).toEqual([]);
  });
  it('of a thing that is no plant says long, not tall', () => {
    const rope = handBook({ Rope: oneADay(steady) }, { quantity: 'length' });
    const plant = handBook({ Bean: oneADay(steady) });
    const textsOf = (notebook: typeof rope) => askedOn('Y1', notebook, ninth).map(questionText);
    expect(textsOf(rope)).toEqual([
      'Think of Rope on Tuesday 10 March. How long might it be? Why?',
    ]);
    expect(textsOf(plant)).toEqual([
      'Think of Bean on Tuesday 10 March. How tall might it be? Why?',
    ]);
  });
});

describe('Y2, what it was on a missed day', () => {
  const ask = (values: readonly (number | null)[], stage: 'grade-1' | 'grade-2' = 'grade-2') =>
    askedOn('Y2', handBook({ Bean: oneADay(values) }), { on: 9, stage });

  // Between its neighbours, which lie two or three days apart (common practice, no source).
  it('is between the numbers before and after, both ends too', () => {
    const [question, ...more] = ask([2, 3, null, 6, 7, 8]);
    expect(question?.answer).toEqual(spanOf(lengthOf(3), lengthOf(6)));
    expect(answerText(question!.answer)).toBe('between 3 cm and 6 cm');
    expect(question?.slips[0]).toEqual({ told: lengthOf(0), shows: 'blank-is-zero' });
    expect(more).toEqual([]);
  });
  it('is asked of both days of a gap of three', () => {
    const days = ask([2, 3, null, null, 6, 8]).map(({ blanks }) => blanks['day']);
    expect(days).toEqual([dayOf(4), dayOf(5)]);
  });
  it('is withdrawn over four days, between equal numbers, and in grade 1', () => {
    expect(ask([2, 3, null, null, null, 6, 7])).toEqual([]);
    expect(ask([2, 3, null, 3, 4, 5])).toEqual([]);
    expect(ask([2, 3, null, 6, 7, 8], 'grade-1')).toEqual([]);
  });
});

describe('Y3, as tall as a thing by a day', () => {
  const withPot = (pot: number) =>
    askedOn('Y3', handBook({ Bean: oneADay(steady) }, { pot: read(pot) }), ninth);

  // The span for the 10th is 8 to 10 cm, as for Y1.
  it('might be where the thing is within the span, and is not yet where it is beyond', () => {
    expect(withPot(9)[0]?.answer).toEqual(ideaOf('might-be-as-tall'));
    expect(withPot(10)[0]?.answer).toEqual(ideaOf('might-be-as-tall'));
    expect(withPot(11)[0]?.answer).toEqual(ideaOf('probably-not-yet'));
    expect(withPot(11).map(questionText)).toEqual([
      'The pot is 11 cm tall. Will Bean be as tall on Tuesday 10 March? Why?',
    ]);
  });
  it('asks about a hand of whoever measured it', () => {
    const span = {
      ...{ kind: 'helper-length-measured', person: child, helper: 'hand-span' },
      measured: read(14),
    } as EntryDraft;
    const notebook = handBook({ Bean: oneADay(steady) }, { after: [span] });
    expect(askedOn('Y3', notebook, ninth).map(questionText)).toEqual([
      'Wren’s hand is 14 cm wide. Will Bean be as tall on Tuesday 10 March? Why?',
    ]);
  });
  it('is withdrawn of a thing that is no taller than the plant, or of another unit', () => {
    expect(withPot(8)).toEqual([]);
    expect(withPot(5)).toEqual([]);
    const inches = handBook({ Bean: oneADay(steady) }, { pot: read(4, 'in', '1 in') });
    expect(askedOn('Y3', inches, ninth)).toEqual([]);
  });
});

describe('Y5, could it grow so much again', () => {
  const ask = (stage: 'grade-2' | 'grade-3', values: readonly number[]) =>
    askedOn('Y5', handBook({ Bean: oneADay(values) }), { on: 9, stage });
  it('asks for 30 cm more in grade 3, while the plant is no taller than that', () => {
    expect(ask('grade-3', steady)[0]?.blanks['more']).toEqual(lengthOf(30));
    expect(ask('grade-3', [23, 24, 25, 26, 27, 28, 29, 30])).toHaveLength(1);
  });
  it('is withdrawn in grade 2, and of a plant taller than 30 cm', () => {
    expect(ask('grade-2', steady)).toEqual([]);
    expect(ask('grade-3', [24, 25, 26, 27, 28, 29, 30, 31])).toEqual([]);
  });
  it('asks for 12 inches more where inches are read', () => {
    const inches = handBook({ Bean: oneADay(steady) }, { unit: 'in', mark: '1 in' });
    const [question] = askedOn('Y5', inches, {
      ...{ on: 9, stage: 'grade-3', told: ['in', '1 in'] },
    });
    expect(question?.blanks['more']).toEqual(lengthOf(12, 'in', '1 in'));
  });
});
