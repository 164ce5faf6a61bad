import { describe, expect, it } from 'vitest';
import type { Stage } from '#core/journal';
import { answerText } from '#ui/ladder-words';
import { kinds } from './facts-of-lines';
import { handBook, oneADay, type HandReading } from './hand-journal';
import { askedOn, dayOf, ideaOf, lengthOf, spanOf, wordOf } from './hand-facts';

const ofSky = { on: 25, source: 'kind-days', graph: 'bar-graph', told: null } as const;

describe('Y4 and Y8, about the weather', () => {
  it('Y4 is asked from ten days of two kinds on, from grade 2 on', () => {
    // 6 + 4 = 10 days; 6 + 3 = 9.
    const ten = kinds({ sun: 6, rain: 4 });
    expect(askedOn('Y4', ten, ofSky)[0]?.answer).toEqual(ideaOf('seasons-and-chance'));
    expect(askedOn('Y4', kinds({ sun: 6, rain: 3 }), ofSky)).toEqual([]);
    expect(askedOn('Y4', kinds({ sun: 10, rain: 0 }), ofSky)).toEqual([]);
    expect(askedOn('Y4', ten, { ...ofSky, stage: 'grade-1' })).toEqual([]);
  });
  it('Y8 asks for the leader out of all kinds, where it leads by two days', () => {
    // 5 - 3 = 2.
    const [question, ...more] = askedOn('Y8', kinds({ sun: 5, rain: 3, cloud: 2 }), ofSky);
    expect(question?.answer).toEqual(wordOf('sun'));
    expect(question?.blanks['kinds']).toEqual({
      ...{ kind: 'order', things: ['sun', 'rain', 'cloud'].map(wordOf) },
    });
    expect(question?.slips.map(({ shows }) => shows)).toEqual(['sure-of-it', 'other-category']);
    expect(more).toEqual([]);
  });
  it('Y8 is withdrawn where the lead is one day, or none', () => {
    expect(askedOn('Y8', kinds({ sun: 4, rain: 3, cloud: 2 }), ofSky)).toEqual([]);
    expect(askedOn('Y8', kinds({ sun: 4, rain: 4 }), ofSky)).toEqual([]);
  });
});

describe('Y6, another seed of the packet', () => {
  it('is asked of plants and of nothing else, from grade 2 on', () => {
    const plant = handBook({ Bean: oneADay([1, 2, 3, 4]) });
    expect(askedOn('Y6', plant, { on: 5 })[0]?.answer).toEqual(ideaOf('similar-not-same'));
    expect(askedOn('Y6', plant, { on: 5, stage: 'grade-1' })).toEqual([]);
    const rope = handBook({ Rope: oneADay([1, 2, 3, 4]) }, { quantity: 'length' });
    expect(askedOn('Y6', rope, { on: 5 })).toEqual([]);
  });
});

describe('Y7, measured again right now', () => {
  const plotOf = (values: readonly number[]) =>
    askedOn(
      'Y7',
      handBook({ Stem: values.map((value) => ({ on: 2, value })) }, { quantity: 'length' }),
      { on: 2, to: 2, source: 'reads-of-one', graph: 'line-plot' },
    );
  it('is within the plot, from five reads with two numbers on', () => {
    const [question] = plotOf([7, 8, 8, 9, 8]);
    expect(question?.answer).toEqual(spanOf(lengthOf(7), lengthOf(9)));
    expect(answerText(question!.answer)).toBe('between 7 cm and 9 cm');
  });
  it('is withdrawn of four reads, and where all are the same', () => {
    expect(plotOf([7, 8, 8, 9])).toEqual([]);
    expect(plotOf([8, 8, 8, 8, 8])).toEqual([]);
  });
});

describe('Y9, where the shadow will be', () => {
  const ask = (clock: readonly (readonly [string, number])[], stage: Stage = 'grade-2') =>
    askedOn(
      'Y9',
      handBook(
        { Stick: clock.map(([at, value]): HandReading => ({ on: 2, at, value })) },
        { quantity: 'shadow' },
      ),
      { on: 2, to: 2, source: 'hours-in-order', graph: 'line-graph', stage },
    );
  it.each([
    // It grew after noon: an hour on it is longer.
    [['13:00', 40], ['15:00', 60], '16:00', 'longer-and-further-round'],
    // It shrank in the morning, and ten is before eleven: shorter.
    [['08:00', 90], ['09:00', 70], '10:00', 'shorter-and-further-round'],
  ] as const)('after %j and %j is told for %s', (first, second, time, way) => {
    const [question] = ask([first, second]);
    expect(question?.answer).toEqual(ideaOf(way));
    expect(question?.blanks['time']).toEqual({ kind: 'time', time });
  });
  it('is withdrawn around noon, and for later than five', () => {
    expect(
      ask([
        ['10:00', 50],
        ['11:00', 40],
      ]),
    ).toEqual([]);
    expect(
      ask([
        ['15:00', 50],
        ['16:30', 80],
      ]),
    ).toEqual([]);
  });
});

describe('Y10, when the next leaves might show', () => {
  const leaves = (counts: readonly (number | null)[]) =>
    handBook({
      Bean: counts.map((count, index) => ({
        ...{ on: index + 2, value: index + 1 },
        ...(count === null ? {} : { leaves: count }),
      })),
    });
  const ask = (counts: readonly (number | null)[], on: number, stage: Stage = 'grade-3') =>
    askedOn('Y10', leaves(counts), { on, stage });

  it('spans the shortest wait to the longest, and a day more at both ends', () => {
    // More leaves on 2, 5 and 9 March: waits of 3 and 4 days. From 9 + 3 - 1 = 11 to 9 + 4 + 1 = 14.
    const [question, ...more] = ask([2, 2, null, 4, 4, null, 4, 6], 9);
    expect(question?.answer).toEqual(spanOf(dayOf(11), dayOf(14)));
    expect(answerText(question!.answer)).toBe('about Wednesday 11 March to Saturday 14 March');
    expect(more).toEqual([]);
  });
  it('is withdrawn after one new leaf only, once the span has begun, and in grade 2', () => {
    expect(ask([2, 2, null, 4, 4, null, 4, 4], 9)).toEqual([]);
    expect(ask([2, 2, null, 4, 4, null, 4, 6], 11)).toEqual([]);
    expect(ask([2, 2, null, 4, 4, null, 4, 6], 9, 'grade-2')).toEqual([]);
  });
});
