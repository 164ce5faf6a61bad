import { describe, expect, test } from 'vitest';
import { stripLayout, type StripFrame } from '../../../src/lib/ui/strips/strip-layout';
import { statesShown, wordsOf, type StripDay } from '../../../src/lib/ui/strips/strip-day';
import { stripSentence } from '../../../src/lib/ui/strips/strip-sentence';

const inch = 25_400_000;

const measured = (day: string, inches: number, more: Partial<StripDay> = {}): StripDay => ({
  day,
  state: 'number',
  exact: inches * inch,
  text: `${inches} in`,
  isNewest: false,
  ...more,
});
const without = (day: string, state: StripDay['state']): StripDay => ({
  day,
  state,
  exact: null,
  text: '',
  isNewest: false,
});

const frame: StripFrame = {
  unit: 'in',
  mark: '1/2 in',
  variant: 'stem',
  reachPx: 240,
  pitchPx: 50,
  gapPx: 6,
  detail: 'mark',
};

const week = [
  without('Mon 2', 'not-up-yet'),
  measured('Tue 3', 1),
  without('Wed 4', 'blank'),
  without('Thu 5', 'missed'),
  measured('Fri 6', 3.5),
];

describe('where strips stand', () => {
  test('every day has one place, measured or not, so that the row keeps time', () => {
    const { strips, rowPx } = stripLayout(week, frame);
    expect(strips.map((strip) => strip.startPx)).toEqual([3, 53, 103, 153, 203]);
    expect(strips.every((strip) => strip.widthPx === 44)).toBe(true);
    expect(rowPx).toBe(250);
  });

  test('lengths are in proportion to the readings, and a day without a number has none', () => {
    const { strips, topExact } = stripLayout(week, frame);
    expect(topExact).toBe(4 * inch);
    expect(strips.map((strip) => strip.reachPx)).toEqual([null, 60, null, null, 210]);
  });

  test('no rain is a number: its strip has no length but it is there', () => {
    const { strips } = stripLayout([measured('Mon 2', 0)], { ...frame, variant: 'gauge' });
    expect(strips[0]!.reachPx).toBe(0);
  });

  test('the ruler reaches the next whole inch above the longest strip', () => {
    expect(stripLayout([measured('Mon 2', 6.5)], frame).topExact).toBe(7 * inch);
    expect(stripLayout([measured('Mon 2', 7)], frame).topExact).toBe(7 * inch);
  });

  test('a first half inch looks small beside its ruler', () => {
    const { strips } = stripLayout([measured('Mon 2', 0.5)], frame);
    expect(strips[0]!.reachPx).toBe(30);
  });

  test('two rows can share one ruler, and a longer strip still fits', () => {
    expect(stripLayout(week, { ...frame, topExact: 12 * inch }).topExact).toBe(12 * inch);
    expect(stripLayout(week, { ...frame, topExact: inch }).topExact).toBe(4 * inch);
  });

  test('numbers on the ruler never run into each other', () => {
    for (const inches of [3, 12, 30, 90]) {
      const { ticks } = stripLayout([measured('Mon 2', inches)], { ...frame, reachPx: 60 });
      const labelled = ticks.filter((tick) => tick.label !== null);
      for (const [index, tick] of labelled.slice(1).entries()) {
        expect((tick.position - labelled[index]!.position) * 60).toBeGreaterThanOrEqual(20);
      }
    }
  });

  test('a rain total for three days is as wide as its days, and covers the two before it', () => {
    const days = [
      without('Fri 6', 'missed'),
      without('Sat 7', 'blank'),
      without('Sun 8', 'missed'),
      measured('Mon 9', 1, { spanDays: 3 }),
    ];
    const { strips } = stripLayout(days, { ...frame, variant: 'gauge' });
    expect(strips[3]).toMatchObject({ startPx: 53, widthPx: 144 });
    expect(strips.map((strip) => strip.isCovered)).toEqual([false, true, true, false]);
    expect(statesShown(days)).toEqual(['missed']);
    expect(statesShown(days.slice(1))).toEqual([]);
    expect(wordsOf(days[3]!)).toBe('1 in, a total for 3 days');
  });

  test('a total that began before the first day shown begins at the row', () => {
    const { strips } = stripLayout([measured('Mon 9', 1, { spanDays: 3 })], frame);
    expect(strips[0]).toMatchObject({ startPx: 3, widthPx: 44 });
  });
});

describe('the row in a sentence', () => {
  test('tells how many days were measured, the first and the newest', () => {
    expect(stripSentence('My bean', week)).toBe(
      'My bean: 2 of 5 days measured, from 1 in on Tue 3 to 3.5 in on Fri 6.',
    );
  });

  test('names the only reading, or says there is none yet', () => {
    expect(stripSentence('My bean', week.slice(0, 2))).toBe(
      'My bean: 1 of 2 days measured, 1 in on Tue 3.',
    );
    expect(stripSentence('My bean', week.slice(0, 1))).toBe('My bean: nothing measured yet.');
    expect(stripSentence('My bean', [])).toBe('My bean: nothing measured yet.');
  });
});
