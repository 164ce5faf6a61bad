import type { Quantity } from '#core/journal';

/** Whether two of a kind can be held against each other day by day: what grows, or changes its length. */
export const canBeFairTest = (quantity: Quantity): boolean =>
  quantity === 'plant-height' || quantity === 'length';
