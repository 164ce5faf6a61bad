/** A source of chance: each call gives the next number from 0 up to, not including, 1. */
export type Random = () => number;

/**
 * A source of chance that gives the same numbers for the same seed, on every device, so that a
 * made-up task can be made again. Any whole number is a seed, also 0 and those below; neighbours
 * give unlike numbers. A seed that is no whole number throws. Not for secrets.
 * Source: SplitMix64, G. L. Steele, D. Lea and C. H. Flood, "Fast Splittable Pseudorandom Number
 * Generators" (OOPSLA 2014); the upper 53 bits of each word are used, as many as a double holds.
 * @example
 * seededRandom(1234567)() // => Number(6457827717110365317n >> 11n) / 2 ** 53
 */
export const seededRandom = (seed: number): Random => {
  if (!Number.isSafeInteger(seed)) throw new RangeError(`${seed} is no whole number for a seed`);
  let state = BigInt(seed) & word;
  return () => {
    state = (state + goldenGamma) & word;
    return Number(mixed(state) >> 11n) / 2 ** 53;
  };
};

/**
 * One of these, each as likely as the others. None to choose from is our own mistake and throws.
 * @example
 * oneOf(['only'], seededRandom(1)) // => 'only'
 */
export const oneOf = <Item>(items: readonly Item[], random: Random): Item => {
  if (items.length === 0) throw new Error('There is nothing to choose from');
  return items[Math.floor(random() * items.length)] as Item;
};

const word = 0xffff_ffff_ffff_ffffn;
const goldenGamma = 0x9e37_79b9_7f4a_7c15n;

const mixed = (state: bigint): bigint => {
  const once = ((state ^ (state >> 30n)) * 0xbf58_476d_1ce4_e5b9n) & word;
  const twice = ((once ^ (once >> 27n)) * 0x94d0_49bb_1331_11ebn) & word;
  return twice ^ (twice >> 31n);
};
