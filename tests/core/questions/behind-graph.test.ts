import { describe, expect, it } from 'vitest';
import type { EntryDraft } from '#core/journal';
import { answerText } from '#ui/ladder-words';
import { thing } from '../graphs/small-notebook';
import { kinds } from './facts-of-lines';
import { handBook, march, oneADay } from './hand-journal';
import { askedOn, ideaOf, wordOf } from './hand-facts';

const twoPlants = { Sunny: oneADay([3, 4, 5]), Shady: oneADay([4, 6, 8]) };
const planned = (different: string, same: readonly string[]): EntryDraft => ({
  ...{ kind: 'fair-test-planned', investigation: thing, different, same: [...same] },
  ...{ second: ['leaves'] },
});
const noticed = (what: string): EntryDraft => ({
  ...{ kind: 'difference-noticed', investigation: thing, day: march(3), what },
});

/** What can be asked about a test, and about a graph itself (common practice, no source). */
describe('H5, whether the test was fair', () => {
  const ask = (before: readonly EntryDraft[], after: readonly EntryDraft[] = []) =>
    askedOn('H5', handBook(twoPlants, { before, after }), { on: 5 });
  it('is answered by the one difference and by what was kept the same', () => {
    const [question, ...more] = ask([planned('water', ['seed', 'depth'])]);
    expect(question?.answer).toEqual({
      kind: 'order',
      things: [
        ...[ideaOf('one-difference'), wordOf('water')],
        ...[ideaOf('planned-the-same'), wordOf('seed'), wordOf('depth')],
      ],
    });
    expect(answerText(question!.answer)).toBe(
      'It was fair. We changed just one thing: water. We planned to keep this the same: seed and how deep the seed is.',
    );
    expect(more).toEqual([]);
  });
  it('is answered by a second difference where one was noticed', () => {
    const [question] = ask([planned('water', ['seed'])], [noticed('One pot was moved.')]);
    expect(answerText(question!.answer)).toBe(
      'We planned to change one thing: water. It was not all fair. One more thing changed: One pot was moved. We planned to keep this the same: seed.',
    );
  });
  it('is withdrawn without a plan, with one written too late, and of one plant', () => {
    expect(ask([])).toEqual([]);
    expect(ask([], [planned('water', ['seed'])])).toEqual([]);
    const one = handBook({ Sunny: oneADay([3, 4]) }, { before: [planned('water', ['seed'])] });
    expect(askedOn('H5', one, { on: 5 })).toEqual([]);
  });
});

describe('H7, whether taller is healthier', () => {
  const leaves = (values: readonly number[]) =>
    values.map((value, index) => ({ on: 2 + index * 11, value, leaves: 2 + index }));
  const light = (before: readonly EntryDraft[], shady: readonly number[], on = 26) =>
    askedOn('H7', handBook({ Sunny: leaves([3, 6, 9]), Shady: leaves(shady) }, { before }), {
      on,
      stage: 'grade-3',
    });
  // Read on 2, 13 and 24 March: from 2 to 23 March are the 21 days of the light trap.
  it('names the taller plant of a light test, once leaves were counted and three weeks are over', () => {
    const [question, ...more] = light([planned('light', ['water'])], [4, 8, 12]);
    expect(question?.blanks['specimen']).toEqual(wordOf('Shady'));
    expect(question?.answer).toEqual(ideaOf('look-at-leaves-and-colour'));
    expect(more).toEqual([]);
  });
  it('is withdrawn before three weeks, where both are as tall, and where light did not differ', () => {
    expect(light([planned('light', ['water'])], [4, 8, 12], 22)).toEqual([]);
    expect(light([planned('light', ['water'])], [4, 8, 9])).toEqual([]);
    expect(light([planned('water', ['light'])], [4, 8, 12])).toEqual([]);
  });
  it('is withdrawn where nothing was looked at beside the height', () => {
    const bare = { Sunny: [2, 13, 24], Shady: [2, 13, 24] };
    const [sunny, shady] = Object.values(bare).map((days, log) =>
      days.map((on, index) => ({ on, value: 3 + index * (3 + log) })),
    );
    const notebook = handBook(
      { Sunny: sunny!, Shady: shady! },
      { before: [planned('light', ['water'])] },
    );
    expect(askedOn('H7', notebook, { on: 26 })).toEqual([]);
  });
});

describe('H8, whose weather it is', () => {
  const ofSky = { on: 25, source: 'kind-days', graph: 'bar-graph', told: null } as const;
  it('is ours, on the days that the graph is of', () => {
    const [question] = askedOn('H8', kinds({ sun: 6, rain: 3 }), { ...ofSky, from: 2, to: 10 });
    expect(question?.answer).toEqual({
      kind: 'order',
      things: [ideaOf('our-place-these-dates'), { kind: 'days', days: [march(2), march(10)] }],
    });
    expect(answerText(question!.answer)).toBe(
      'It is ours, where we live. It shows these days: Monday 2 March to Tuesday 10 March.',
    );
  });
  it('is withdrawn of plants, of kinds that are no weather, and in grade 1', () => {
    expect(askedOn('H8', handBook(twoPlants), { on: 5 })).toEqual([]);
    expect(askedOn('H8', kinds({ boots: 6, socks: 3 }), ofSky)).toEqual([]);
    expect(askedOn('H8', kinds({ sun: 6, rain: 3 }), { ...ofSky, stage: 'grade-1' })).toEqual([]);
  });
});

describe('H9, which cannot be answered', () => {
  it('offers three different questions, of which one asks why, or of another place', () => {
    const found = askedOn('H9', handBook({ Bean: oneADay([3, 4, 5]) }), { on: 5 });
    expect(found.map(({ answer }) => answer)).toEqual(['ask-why-so', 'ask-other-home'].map(ideaOf));
    for (const { blanks, answer, slips } of found) {
      const offered = blanks['offered']?.kind === 'order' ? blanks['offered'].things : [];
      expect(new Set(offered.map((each) => JSON.stringify(each))).size).toBe(3);
      expect(offered).toContainEqual(answer);
      for (const { told } of slips) expect(offered).toContainEqual(told);
    }
  });
  it('is withdrawn in grade 1', () => {
    const bean = handBook({ Bean: oneADay([3, 4, 5]) });
    expect(askedOn('H9', bean, { on: 5, stage: 'grade-1' })).toEqual([]);
  });
});
