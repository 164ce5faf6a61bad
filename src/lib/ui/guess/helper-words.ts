import type { HelperLength } from '#core/journal';

/** A helper length as a child names it. */
export const helperWords: Readonly<Record<HelperLength, string>> = {
  'little-finger': 'little finger',
  thumb: 'thumb',
  'hand-span': 'hand',
  foot: 'foot',
  step: 'step',
  reach: 'arms',
  ruler: 'ruler',
};

export const helperQuestion = 'Which helper did you use?';

/** The helper that suits, named and no more: how often it fits is the child's to see. */
export const helperToTryWords = (helper: HelperLength): string =>
  helper === 'ruler'
    ? 'Next time, think of a ruler.'
    : `Next time, think of your ${helperWords[helper]}.`;
