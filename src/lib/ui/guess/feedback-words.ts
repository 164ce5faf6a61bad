import type { Quantity } from '#core/journal';
import type { Unit } from '#core/measure';
import type { Miss } from '#core/series';

/** What a guess is answered with: how near in words, then which way; never a number of points. */
export function feedbackWords(
  { size, direction }: Pick<Miss, 'size' | 'direction'>,
  quantity: Quantity,
  unit: Unit,
): string {
  if (direction === 'exact') return exactWords;
  return `${sizeWords[size]} Your guess was ${wayWords(quantity, unit)[direction]}.`;
}

/** Whether the answer asks for a helper: the others do not need one. */
export const asksForHelper = ({ size, direction }: Pick<Miss, 'size' | 'direction'>): boolean =>
  size === 'far' && direction !== 'exact';

const exactWords = 'Just so! How did you do it?';

const sizeWords: Readonly<Record<Miss['size'], string>> = {
  'very-close': 'Very close.',
  close: 'Close.',
  far: 'Far. Which helper could you use?',
};

const wayWords = (quantity: Quantity, unit: Unit): Record<'too-long' | 'too-short', string> => {
  if (unit === 'count') return { 'too-long': 'too many', 'too-short': 'too few' };
  if (quantity === 'rain') return { 'too-long': 'too much', 'too-short': 'too little' };
  return { 'too-long': 'too long', 'too-short': 'too short' };
};
