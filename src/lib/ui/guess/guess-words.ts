import type { Quantity } from '#core/journal';
import type { Unit } from '#core/measure';

/** What is said before the measuring. No number stands in it but the child's own. */
export const guessWords = {
  label: 'My guess',
  submit: 'That is my guess',
  skip: 'Measure right away',
  isIn: 'Your guess is in. Now measure.',
} as const;

const questions: Readonly<Record<Quantity, string>> = {
  'plant-height': 'How tall do you think?',
  rain: 'How much do you think fell?',
  shadow: 'How long do you think?',
  length: 'How long do you think?',
  'daily-kind': 'What do you think?',
};

/** The question that is answered by looking, with no ruler. */
export const guessQuestion = (quantity: Quantity, unit: Unit): string =>
  unit === 'count' ? 'How many do you think?' : questions[quantity];
