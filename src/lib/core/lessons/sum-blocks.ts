/** Place-value blocks: flats of a hundred, rods of ten, single cubes. More than 9 of one are allowed. */
export interface Blocks {
  readonly hundreds: number;
  readonly tens: number;
  readonly ones: number;
}

/**
 * What is done with the blocks, one thing at a time: `laid` (both numbers for adding, the whole for
 * taking away), `put-together`, a ten or hundred `made` out of ten smaller, or `broken` into them,
 * and `taken-away`.
 */
export type BlockDeed =
  | 'laid'
  | 'put-together'
  | 'ten-made'
  | 'hundred-made'
  | 'ten-broken'
  | 'hundred-broken'
  | 'taken-away';

export interface BlockStep {
  readonly deed: BlockDeed;
  /** The heaps that lie there after it: two only where two numbers are laid to be added. */
  readonly heaps: readonly Blocks[];
}

/**
 * A number as blocks, the fewest there are. Numbers are whole, from 0 up to 999; 1000 is ten flats.
 * @example
 * blocksOf(243) // => { hundreds: 2, tens: 4, ones: 3 }
 */
export const blocksOf = (number: number): Blocks => ({
  hundreds: Math.floor(number / 100),
  tens: Math.floor((number % 100) / 10),
  ones: number % 10,
});

/**
 * What blocks are worth together.
 * @example
 * valueOfBlocks({ hundreds: 0, tens: 1, ones: 13 }) // => 23
 */
export const valueOfBlocks = ({ hundreds, tens, ones }: Blocks): number =>
  100 * hundreds + 10 * tens + ones;

/**
 * Two numbers added with blocks: both laid, put together, and then ten ones made a ten, or ten tens
 * a hundred, where there are ten. The last step is the sum. (Common Core 2.NBT.B.7, from memory.)
 * @example
 * addedWithBlocks(8, 5).map(({ deed }) => deed) // => ['laid', 'put-together', 'ten-made']
 * addedWithBlocks(12, 5).at(-1) // => { deed: 'put-together', heaps: [{ hundreds: 0, tens: 1, ones: 7 }] }
 */
export const addedWithBlocks = (first: number, second: number): readonly BlockStep[] => {
  const [one, other] = [blocksOf(first), blocksOf(second)];
  const together: Blocks = {
    hundreds: one.hundreds + other.hundreds,
    tens: one.tens + other.tens,
    ones: one.ones + other.ones,
  };
  const tidied = together.ones >= 10 ? tenMade(together) : together;
  return [
    { deed: 'laid', heaps: [one, other] },
    { deed: 'put-together', heaps: [together] },
    ...(tidied === together ? [] : [step('ten-made', tidied)]),
    ...(tidied.tens >= 10 ? [step('hundred-made', hundredMade(tidied))] : []),
  ];
};

/**
 * A number taken away with blocks: the whole laid, a ten broken into ones, or a hundred into tens,
 * where there are too few to take, and then taken away. The last step is what is left. To take away
 * more than there is throws: it is our own mistake.
 * @example
 * takenFromBlocks(13, 8).map(({ deed }) => deed) // => ['laid', 'ten-broken', 'taken-away']
 * takenFromBlocks(100, 1).map(({ deed }) => deed) // => ['laid', 'hundred-broken', 'ten-broken', 'taken-away']
 */
export const takenFromBlocks = (whole: number, part: number): readonly BlockStep[] => {
  if (part > whole) throw new RangeError(`${part} cannot be taken from ${whole}`);
  const away = blocksOf(part);
  const steps = [step('laid', blocksOf(whole))];
  const now = (): Blocks => steps.at(-1)!.heaps[0]!;
  const breakHundred = () => steps.push(step('hundred-broken', hundredBroken(now())));
  if (now().ones < away.ones) {
    if (now().tens === 0) breakHundred();
    steps.push(step('ten-broken', tenBroken(now())));
  }
  if (now().tens < away.tens) breakHundred();
  const { hundreds, tens, ones } = now();
  const left = {
    hundreds: hundreds - away.hundreds,
    tens: tens - away.tens,
    ones: ones - away.ones,
  };
  return [...steps, step('taken-away', left)];
};

const step = (deed: BlockDeed, blocks: Blocks): BlockStep => ({ deed, heaps: [blocks] });

const tenMade = ({ hundreds, tens, ones }: Blocks): Blocks => ({
  ...{ hundreds, tens: tens + 1, ones: ones - 10 },
});
const hundredMade = ({ hundreds, tens, ones }: Blocks): Blocks => ({
  ...{ hundreds: hundreds + 1, tens: tens - 10, ones },
});
const tenBroken = ({ hundreds, tens, ones }: Blocks): Blocks => ({
  ...{ hundreds, tens: tens - 1, ones: ones + 10 },
});
const hundredBroken = ({ hundreds, tens, ones }: Blocks): Blocks => ({
  ...{ hundreds: hundreds - 1, tens: tens + 10, ones },
});
