import type { Measured } from '#core/measure';

/**
 * The reading that counts when the same thing was read several times in one moment: the middle
 * one, which needs no arithmetic. Of an even number, the lower of the two in the middle, so that
 * the answer is always a number somebody read. (Common practice, no source.)
 *
 * @example
 * middleReading([{ text: '9', unit: 'cm', mark: '1 cm', exact: 90000000 }, { text: '7', unit: 'cm', mark: '1 cm', exact: 70000000 }, { text: '8', unit: 'cm', mark: '1 cm', exact: 80000000 }]).text // => '8'
 */
export function middleReading(readings: readonly [Measured, ...Measured[]]): Measured {
  const inOrder = [...readings].sort((left, right) => left.exact - right.exact);
  return inOrder[Math.floor((inOrder.length - 1) / 2)]!;
}
