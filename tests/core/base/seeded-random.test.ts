import { describe, expect, it } from 'vitest';
import { oneOf, seededRandom } from '#core/base';

/**
 * The first five words of SplitMix64 for the seed 1234567, as published with the reference
 * program (Rosetta Code, "Pseudo-random numbers/Splitmix64").
 */
const published = [
  6457827717110365317n,
  3203168211198807973n,
  9817491932198370423n,
  4593380528125082431n,
  16408922859458223821n,
];

describe('chance from a seed', () => {
  it('gives the published words of SplitMix64', () => {
    const random = seededRandom(1234567);
    const words = published.map(() => random());
    // 53 of the 64 bits are kept.
    expect(words.map((each) => BigInt(each * 2 ** 53))).toEqual(
      published.map((each) => each >> 11n),
    );
  });

  it('stays from 0 up to 1, and is not the same for neighbouring seeds', () => {
    const firsts = [-1, 0, 1, 2, 3, Number.MAX_SAFE_INTEGER].map((seed) => seededRandom(seed)());
    expect(new Set(firsts).size).toBe(6);
    for (const each of firsts) expect(each >= 0 && each < 1).toBe(true);
  });

  it('throws for a seed that is no whole number', () => {
    expect(() => seededRandom(1.5)).toThrow('whole number');
    expect(() => seededRandom(Number.NaN)).toThrow('whole number');
  });

  it('chooses each thing about equally often, and throws when there is none', () => {
    const random = seededRandom(7);
    const counts = { a: 0, b: 0, c: 0 };
    for (let turn = 0; turn < 3000; turn += 1) counts[oneOf(['a', 'b', 'c'] as const, random)] += 1;
    // 1000 each expected; six standard deviations of sqrt(3000 * 1/3 * 2/3) = 26 are 155.
    for (const count of Object.values(counts)) expect(Math.abs(count - 1000)).toBeLessThan(155);
    expect(() => oneOf([], random)).toThrow('nothing');
  });
});
