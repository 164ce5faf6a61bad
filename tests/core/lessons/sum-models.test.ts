import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addedWithBlocks,
  blockHelp,
  blocksOf,
  isRegrouped,
  jumpHelp,
  jumpsBetween,
  takenFromBlocks,
  valueOfBlocks,
  type BlockStep,
} from '#core/lessons';

const number = fc.integer({ min: 0, max: 1000 });
const runs = { seed: 6, numRuns: 1000 };

const worth = ({ heaps }: BlockStep): number =>
  heaps.reduce((sum, heap) => sum + valueOfBlocks(heap), 0);
const deeds = (steps: readonly BlockStep[]) => steps.map(({ deed }) => deed);
const isTidy = (step: BlockStep): boolean =>
  step.heaps.every(({ tens, ones }) => tens < 10 && ones < 10);
const isPossible = (step: BlockStep): boolean =>
  step.heaps.every(({ hundreds, tens, ones }) => Math.min(hundreds, tens, ones) >= 0);

describe('blocks', () => {
  it('are worth the number they were laid for, with fewer than ten rods and cubes', () => {
    fc.assert(
      fc.property(number, (each) => {
        const blocks = blocksOf(each);
        expect(valueOfBlocks(blocks)).toBe(each);
        expect(Math.max(blocks.tens, blocks.ones)).toBeLessThan(10);
      }),
      runs,
    );
  });

  it('added, are worth the sum at every step, and end tidy', () => {
    fc.assert(
      fc.property(number, number, (first, second) => {
        const steps = addedWithBlocks(first, second);
        for (const step of steps) expect(worth(step)).toBe(first + second);
        expect(isTidy(steps.at(-1)!)).toBe(true);
        expect(steps.at(-1)!.heaps).toHaveLength(1);
      }),
      runs,
    );
  });

  it('make a ten exactly when the ones come to ten or more', () => {
    fc.assert(
      fc.property(number, number, (first, second) => {
        const makes = deeds(addedWithBlocks(first, second)).includes('ten-made');
        expect(makes).toBe((first % 10) + (second % 10) >= 10);
      }),
      runs,
    );
  });

  it('taken away, are worth the whole until the part goes, and then what is left', () => {
    fc.assert(
      fc.property(number, number, (one, other) => {
        const [whole, part] = [Math.max(one, other), Math.min(one, other)];
        const steps = takenFromBlocks(whole, part);
        for (const step of steps.slice(0, -1)) expect(worth(step)).toBe(whole);
        expect(worth(steps.at(-1)!)).toBe(whole - part);
        expect(steps.at(-1)!.deed).toBe('taken-away');
        for (const step of steps) expect(isPossible(step)).toBe(true);
      }),
      runs,
    );
  });

  it('break a ten exactly when there are too few ones to take', () => {
    fc.assert(
      fc.property(number, number, (one, other) => {
        const [whole, part] = [Math.max(one, other), Math.min(one, other)];
        const breaks = deeds(takenFromBlocks(whole, part)).includes('ten-broken');
        expect(breaks).toBe(whole % 10 < part % 10);
      }),
      runs,
    );
  });

  it('are regrouped for adding exactly when they are for taking away again', () => {
    fc.assert(
      fc.property(number, number, (start, change) => {
        const adds = deeds(addedWithBlocks(start, change)).some((deed) => deed.endsWith('-made'));
        const takes = deeds(takenFromBlocks(start + change, change)).some((deed) =>
          deed.endsWith('-broken'),
        );
        expect([adds, takes]).toEqual([isRegrouped({ start, change }), adds]);
      }),
      runs,
    );
  });

  // Worked with blocks on a table.
  it.each([
    [42, 17, ['laid', 'ten-broken', 'taken-away']],
    [47, 12, ['laid', 'taken-away']],
    [105, 8, ['laid', 'hundred-broken', 'ten-broken', 'taken-away']],
    [210, 95, ['laid', 'ten-broken', 'hundred-broken', 'taken-away']],
    [13, 13, ['laid', 'taken-away']],
  ])('take %i less %i in these steps', (whole, part, expected) => {
    expect(deeds(takenFromBlocks(whole, part))).toEqual(expected);
  });

  it('show thirteen ones and three rods where a rod of 43 was broken', () => {
    expect(takenFromBlocks(43, 8)[1]).toEqual({
      deed: 'ten-broken',
      heaps: [{ hundreds: 0, tens: 3, ones: 13 }],
    });
  });

  it('cannot be taken where there are too few: that is our mistake', () => {
    expect(() => takenFromBlocks(3, 4)).toThrow(RangeError);
  });
});

describe('jumps', () => {
  it('begin and end where they should, each where the one before ended', () => {
    fc.assert(
      fc.property(number, number, (from, to) => {
        const jumps = jumpsBetween(from, to);
        const ends = [from, ...jumps.map((jump) => jump.to)];
        jumps.forEach((jump, index) => {
          expect(jump.from).toBe(ends[index]);
          expect(Math.abs(jump.to - jump.from)).toBe(jump.size);
          expect(jump.size).toBeGreaterThan(0);
        });
        expect(ends.at(-1)).toBe(to);
        expect(jumps.reduce((sum, { size }) => sum + size, 0)).toBe(Math.abs(to - from));
      }),
      runs,
    );
  });

  it('are three at most: to a ten, whole tens, and less than ten', () => {
    fc.assert(
      fc.property(number, number, (from, to) => {
        const jumps = jumpsBetween(from, to);
        expect(jumps.length).toBeLessThanOrEqual(3);
        for (const { size } of jumps) expect(size < 10 || size % 10 === 0).toBe(true);
        expect(jumps.filter(({ size }) => size >= 10).length).toBeLessThanOrEqual(1);
      }),
      runs,
    );
  });

  // Worked on a number line.
  it.each([
    [8, 13, [2, 3]],
    [28, 61, [2, 30, 1]],
    [30, 70, [40]],
    [12, 17, [5]],
    [61, 28, [1, 30, 2]],
    [95, 40, [5, 50]],
    [7, 7, []],
  ])('from %i to %i are of these sizes', (from, to, sizes) => {
    expect(jumpsBetween(from, to).map(({ size }) => size)).toEqual(sizes);
  });
});

describe('help with a sum', () => {
  const sum = fc
    .record({
      start: fc.integer({ min: 1, max: 500 }),
      change: fc.integer({ min: 1, max: 500 }),
      unknown: fc.constantFrom('start' as const, 'change' as const, 'result' as const),
    })
    .map((each) => ({ ...each, result: each.start + each.change }))
    .filter(({ start, change, unknown }) => unknown === 'result' || start !== change);

  it('shows no number that is the answer, until it is answered', () => {
    fc.assert(
      fc.property(sum, (each) => {
        const answer = each[each.unknown];
        const { landings, sizes } = jumpHelp(each, false);
        expect([...landings, ...sizes]).not.toContain(answer);
        for (const { heaps } of blockHelp(each, false))
          expect(heaps.map(valueOfBlocks)).not.toContain(answer);
      }),
      runs,
    );
  });

  it('shows it all afterwards, and it adds up', () => {
    fc.assert(
      fc.property(sum, (each) => {
        const { isBack, landings, sizes } = jumpHelp(each, true);
        const [from, to] = isBack ? [each.result, each.start] : [each.start, each.result];
        expect([landings[0], landings.at(-1)]).toEqual([from, to]);
        expect(sizes.reduce<number>((total, size) => total + size!, 0)).toBe(each.change);
        const last = blockHelp(each, true).at(-1)!;
        expect(last.heaps.map(valueOfBlocks)).toEqual([each[each.unknown]]);
      }),
      runs,
    );
  });
});
