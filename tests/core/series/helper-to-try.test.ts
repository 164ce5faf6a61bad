import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { helperToTry } from '#core/series';
import { helpers } from './care-log';

const cm = (value: number): number => Math.round(value * 10_000_000);
const own = helpers(['little-finger', 1], ['thumb', 1, 'in'], ['hand-span', 13], ['ruler', 30]);

describe('the helper length to try', () => {
  it.each([
    [1.9, null],
    [2, 'little-finger'],
    [5, 'little-finger'],
    [5.08, 'thumb'],
    [10, 'thumb'],
    [25.4, 'thumb'],
    [25.9, null],
    [26, 'hand-span'],
    [59, 'hand-span'],
    [60, 'ruler'],
    [300, 'ruler'],
    [301, null],
  ])('for %s cm is %s', (lengthCm, name) => {
    expect(helperToTry(own, cm(lengthCm))).toBe(name);
  });

  it('is nobody else’s: without own lengths there is none', () => {
    expect(helperToTry(new Map(), cm(20))).toBeNull();
  });

  it('passes over a length of nothing, and a count', () => {
    expect(helperToTry(helpers(['thumb', 0]), cm(20))).toBeNull();
    expect(helperToTry(helpers(['step', 5, 'count', '1']), 20)).toBeNull();
  });

  it('always fits 2 to 10 times, and nothing longer of the own lengths does', () => {
    const lengths = fc.tuple(fc.nat(400), fc.nat(400), fc.nat(400));
    fc.assert(
      fc.property(lengths, fc.nat(3000), ([thumb, span, foot], reading) => {
        const mine = helpers(
          ['thumb', thumb, 'mm'],
          ['hand-span', span, 'mm'],
          ['foot', foot, 'mm'],
        );
        const fits = (mm: number) => mm > 0 && reading >= 2 * mm && reading <= 10 * mm;
        const name = helperToTry(mine, reading * 1_000_000);
        const fitting = [thumb, span, foot].filter(fits);
        expect(name === null ? null : mine.get(name)!.exact / 1_000_000).toBe(
          fitting.length === 0 ? null : Math.max(...fitting),
        );
      }),
      { seed: 7508 },
    );
  });
});
