import type { Quantity } from '#core/journal';

/** The pages of careful measuring, in the order they are learnt. */
export const measureCards = ['ruler', 'both-sides', 'together', 'ahead', 'fair-test'] as const;
export type MeasureCard = (typeof measureCards)[number];

/**
 * The cards that suit what is measured. Reading a ruler can always be learnt. Rain has its own
 * gauge, and a day’s kind has no ruler at all. Rain and shadows change while several people look,
 * so they are not measured by many (common practice, no source); days to come are guessed for
 * what grows; a fair test needs two plants.
 */
export const cardsFor = (quantity: Quantity): readonly MeasureCard[] =>
  measureCards.filter((card) => suits[card].includes(quantity));

const suits: Readonly<Record<MeasureCard, readonly Quantity[]>> = {
  ruler: ['plant-height', 'rain', 'shadow', 'length', 'daily-kind'],
  'both-sides': ['plant-height', 'shadow', 'length'],
  together: ['plant-height', 'length'],
  ahead: ['plant-height', 'length'],
  'fair-test': ['plant-height'],
};
