import type { Quantity } from '#core/journal';

/**
 * What can hurt someone in this work, the gravest first. The words, with the source of each, are
 * the face's; local advice always prevails.
 */
export const cautions = [
  'sun',
  'thunder',
  'beans',
  'water',
  'treated-seed',
  'small-parts',
  'allergy',
  'soil',
  'unknown-plants',
  'heat-lamp',
  'glass',
  'sharp-tools',
  'outdoors',
] as const;
export type Caution = (typeof cautions)[number];

/**
 * The cautions that stand on the page each time a reading is taken, also when every other caution
 * was put away: the harm they speak of does not hurt while it is done, or comes without a sign.
 * @example
 * cautionsAtReading('rain') // => ['thunder']
 */
export const cautionsAtReading = (quantity: Quantity): readonly Caution[] => atReading[quantity];

const atReading: Readonly<Record<Quantity, readonly Caution[]>> = {
  'plant-height': [],
  rain: ['thunder'],
  shadow: ['sun', 'thunder'],
  length: [],
  'daily-kind': ['sun'],
};
