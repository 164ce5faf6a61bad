import type { Quantity } from '#core/journal';

/** What can hurt someone in this work. The words are the face's; local advice always prevails. */
export const cautions = [
  'sun',
  'thunder',
  'beans',
  'treated-seed',
  'small-parts',
  'soil',
  'allergy',
  'unknown-plants',
  'glass',
  'sharp-tools',
  'water',
  'outdoors',
] as const;
export type Caution = (typeof cautions)[number];

/**
 * The cautions to show a grown-up when an investigation is set up, the gravest first.
 * (Which caution belongs to which work: common practice, no source; the sources of each caution
 * stand beside its words.)
 *
 * @example
 * cautionsAtSetUp('shadow')[0] // => 'sun'
 */
export const cautionsAtSetUp = (quantity: Quantity): readonly Caution[] => atSetUp[quantity];

/**
 * The cautions that stand on the page each time a reading is taken.
 * @example
 * cautionsAtReading('rain') // => ['thunder']
 */
export const cautionsAtReading = (quantity: Quantity): readonly Caution[] => atReading[quantity];

const atSetUp: Readonly<Record<Quantity, readonly Caution[]>> = {
  'plant-height': [
    'beans',
    'treated-seed',
    'small-parts',
    'allergy',
    'soil',
    'unknown-plants',
    'glass',
    'sharp-tools',
  ],
  rain: ['thunder', 'water', 'glass', 'outdoors'],
  shadow: ['sun', 'thunder', 'sharp-tools', 'outdoors'],
  length: [],
  'daily-kind': ['sun', 'thunder'],
};

const atReading: Readonly<Record<Quantity, readonly Caution[]>> = {
  'plant-height': [],
  rain: ['thunder'],
  shadow: ['sun', 'thunder'],
  length: [],
  'daily-kind': ['sun'],
};
