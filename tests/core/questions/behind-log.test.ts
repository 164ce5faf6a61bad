import { describe, expect, it } from 'vitest';
import type { EntryDraft } from '#core/journal';
import { answerText, questionText } from '#ui/ladder-words';
import { sibling, specimenId } from '../graphs/small-notebook';
import { read } from '../journal/entries';
import { handBook, march, oneADay } from './hand-journal';
import { askedOn, dayOf, ideaOf, lengthOf, wordOf } from './hand-facts';

/** Where the numbers came from. What is right to answer is common practice, no source. */
describe('H1, where the ruler began', () => {
  const ask = (where: string, stage: 'grade-1' | 'grade-2' = 'grade-1') =>
    askedOn('H1', handBook({ Bean: oneADay([3, 4, 5]) }, { where }), { on: 9, stage });
  it('is asked from grade 1 on of a plan that says: at the soil', () => {
    expect(ask('From the soil to the tip.')[0]?.answer).toEqual(ideaOf('soil-line'));
    expect(ask('From the soil to the tip.')[0]?.slips[0]?.shows).toBe('bottom-of-pot');
  });
  it('is withdrawn where the plan says nothing, or says another place', () => {
    expect(ask('')).toEqual([]);
    expect(ask('From the rim of the pot.')).toEqual([]);
  });
});

describe('H2, why there is no number', () => {
  const missed = (on: number, why?: string): EntryDraft => ({
    ...{ kind: 'day-marked', specimen: specimenId(0), day: march(on), state: 'missed' },
    ...(why ? { why } : {}),
  });
  it('is asked of missed days and of planned blank ones, with the reason where there is one', () => {
    const notebook = handBook(
      { Bean: oneADay([3, null, 5, null, 7]) },
      { after: [missed(3, 'we were away')] },
    );
    const found = askedOn('H2', notebook, { on: 9 });
    // 3 March was marked; 5 March is blank; 7 and 8 March are blank too, before the day of asking.
    expect(found.map(({ blanks }) => blanks['day'])).toEqual([3, 5, 7, 8].map(dayOf));
    expect(found[0]?.answer).toEqual({
      ...{ kind: 'order', things: [ideaOf('we-missed-it'), wordOf('we were away')] },
    });
    expect(answerText(found[0]!.answer)).toBe(
      'We did not measure on that day. That is not 0. We were away.',
    );
    expect(found[1]?.answer).toEqual(ideaOf('we-missed-it'));
  });
  it('is withdrawn of days before the first number, and of one that says not up yet', () => {
    const notUp: EntryDraft = {
      ...{ kind: 'day-marked', specimen: specimenId(0), day: march(2), state: 'not-up-yet' },
    };
    const notebook = handBook({ Bean: oneADay([null, null, 5, 6]) }, { after: [notUp] });
    expect(askedOn('H2', notebook, { on: 6 })).toEqual([]);
  });
  it('of rain holds the blank against 0, not against growth', () => {
    const rain = handBook(
      { Gauge: oneADay([3, null, 5]) },
      { quantity: 'rain', unit: 'mm', mark: '1 mm' },
    );
    const [question] = askedOn('H2', rain, {
      ...{ on: 5, source: 'day-values', graph: 'bar-graph', told: ['mm', '1 mm'] },
    });
    expect(question?.slips.map(({ shows }) => shows)).toEqual(['blank-is-zero']);
  });
});

describe('H3, which of two is right', () => {
  const both = (one: number, other: number) =>
    handBook({
      Bean: [...oneADay([3, 4, 5, 6]), { on: 6, value: one }, { on: 6, value: other, by: sibling }],
    });
  it('is asked where two people differ by one mark: 8 - 7 = 1', () => {
    const [question, ...more] = askedOn('H3', both(7, 8), { on: 6 });
    expect([question?.blanks['one'], question?.blanks['other']]).toEqual([
      lengthOf(7),
      lengthOf(8),
    ]);
    expect(question?.answer).toEqual(ideaOf('both-careful'));
    expect(more).toEqual([]);
  });
  it('is withdrawn where they agree, and where they are two marks apart', () => {
    expect(askedOn('H3', both(7, 7), { on: 6 })).toEqual([]);
    expect(askedOn('H3', both(6, 8), { on: 6 })).toEqual([]);
  });
});

describe('H4, which unit shows more', () => {
  const inches = (number: number) => read(number, 'in', '1 in');
  const pairs = (...each: readonly (readonly [on: number, cm: number, inches: number])[]) =>
    handBook({
      Bean: each.map(([on, value, number]) => ({ on, value, other: inches(number) })),
    });
  // 7 cm is 2.76 inches and 8 cm is 3.15 (25.4 mm to the inch by definition): both read as 3.
  it('is asked where the inches stayed and the centimetres rose: 3, 3 and 7, 8', () => {
    const [question, ...more] = askedOn('H4', pairs([2, 7, 3], [3, 8, 3]), { on: 5 });
    expect(question?.answer).toEqual(ideaOf('smaller-unit'));
    expect(questionText(question!)).toBe(
      'Look at Monday 2 March and Tuesday 3 March. It was 3 inches both times. Did it stop? Which shows more, an inch or a centimetre?',
    );
    expect([question?.blanks['before'], question?.blanks['after']]).toEqual([
      lengthOf(7),
      lengthOf(8),
    ]);
    expect(more).toEqual([]);
  });
  it('is withdrawn where the inches rose too, and where the centimetres stayed', () => {
    // 10 cm is 3.94 inches, read as 4.
    expect(askedOn('H4', pairs([2, 7, 3], [4, 10, 4]), { on: 5 })).toEqual([]);
    expect(askedOn('H4', pairs([2, 7, 3], [3, 7, 3]), { on: 5 })).toEqual([]);
  });
  it('is withdrawn over more than a week: from 2 to 10 March are 8 days', () => {
    expect(askedOn('H4', pairs([2, 7, 3], [9, 8, 3]), { on: 12 })).toHaveLength(1);
    expect(askedOn('H4', pairs([2, 7, 3], [10, 8, 3]), { on: 12 })).toEqual([]);
  });
});

describe('H10, why the crossed-out number was kept', () => {
  it('is asked of the day whose number was mended, and of no other', () => {
    const notebook = handBook({
      Bean: [
        { on: 2, value: 3 },
        { on: 3, value: 9, mendedTo: 4 },
        { on: 4, value: 5 },
      ],
    });
    const found = askedOn('H10', notebook, { on: 5, stage: 'grade-1' });
    expect(found.map(({ blanks }) => blanks['day'])).toEqual([dayOf(3)]);
    expect(found[0]?.answer).toEqual(ideaOf('honest-record'));
  });
  it('is withdrawn where the number was written again as it was', () => {
    const same = handBook({
      Bean: [
        { on: 2, value: 3 },
        { on: 3, value: 4, mendedTo: 4 },
      ],
    });
    expect(askedOn('H10', same, { on: 5 })).toEqual([]);
  });
});
