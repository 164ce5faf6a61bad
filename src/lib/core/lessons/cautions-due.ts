import { daysBetween, type CivilDay } from '#core/calendar';
import type { Quantity } from '#core/journal';
import { cautions, cautionsAtReading, type Caution } from './caution';

/** The moments at which a caution is told: beside what is about to be done. */
export const cautionPlaces = [
  'set-up',
  'shopping',
  'sowing',
  'reading',
  'outdoors',
  'weekly',
] as const;
export type CautionPlace = (typeof cautionPlaces)[number];

/** What the choice of cautions rests on. Leave out what is not known: the caution is then told. */
export interface CautionFacts {
  /** The last day each caution was put away. */
  readonly putAway: ReadonlyMap<string, CivilDay>;
  readonly today: CivilDay;
  /** Whether a lamp or heat mat is used. */
  readonly lamp?: boolean;
  /** Whether a child under three is about. */
  readonly smallChildren?: boolean;
}

/**
 * The cautions to tell at a moment, the gravest first. At set-up all that apply are told, put away
 * or not: it is a new beginning. Elsewhere one that was put away rests for seven days, the day it
 * was put away counted; a day put away that has not come yet (a clock was set back) hides nothing.
 * Sun and thunder never rest.
 * Heat, ticks and roads are told in every month, because which half of the earth a family lives
 * on is not asked.
 * Which caution belongs to which moment: common practice, no source; the source of each caution
 * stands beside its words.
 * @example
 * cautionsDue('weekly', 'rain', { putAway: new Map(), today: '2026-03-09' }) // => ['water']
 * cautionsDue('weekly', 'rain', { putAway: new Map([['water', '2026-03-03']]), today: '2026-03-09' }) // => []
 * cautionsDue('weekly', 'rain', { putAway: new Map([['water', '2026-03-02']]), today: '2026-03-09' }) // => ['water']
 */
export const cautionsDue = (
  place: CautionPlace,
  quantity: Quantity,
  facts: CautionFacts,
): readonly Caution[] => {
  const here = cautionsAt(place, quantity).filter((caution) => mayApply(caution, place, facts));
  return place === 'set-up' ? here : here.filter((caution) => !isResting(caution, facts));
};

/**
 * Whether a caution may be put away for a week. Sun and thunder may not.
 * @example
 * mayBePutAway('sun') // => false
 * mayBePutAway('glass') // => true
 */
export const mayBePutAway = (caution: Caution): boolean =>
  caution !== 'sun' && caution !== 'thunder';

/**
 * The cautions to show a grown-up when an investigation is set up, the gravest first.
 * @example
 * cautionsAtSetUp('shadow')[0] // => 'sun'
 */
export const cautionsAtSetUp = (quantity: Quantity): readonly Caution[] =>
  cautionsAt('set-up', quantity);

const cautionsAt = (place: CautionPlace, quantity: Quantity): readonly Caution[] => {
  const told = [
    ...(place === 'reading' ? cautionsAtReading(quantity) : []),
    ...(byPlace[place][quantity] ?? []),
  ];
  return cautions.filter((caution) => told.includes(caution));
};

const mayApply = (
  caution: Caution,
  place: CautionPlace,
  { lamp, smallChildren }: CautionFacts,
): boolean => {
  // Where readings are taken each day, a lamp is only spoken of when there is one.
  if (caution === 'heat-lamp') return place === 'reading' ? lamp === true : lamp !== false;
  return caution !== 'small-parts' || smallChildren !== false;
};

const isResting = (caution: Caution, { putAway, today }: CautionFacts): boolean => {
  const since = putAway.get(caution);
  if (since === undefined || !mayBePutAway(caution)) return false;
  const days = daysBetween(since, today);
  return days >= 0 && days < restDays;
};

/** No caution is repeated within a week (common practice, no source). */
const restDays = 7;

type ByQuantity = Readonly<Partial<Record<Quantity, readonly Caution[]>>>;

const planting = ['beans', 'treated-seed', 'small-parts', 'allergy', 'soil'] as const;
const outOfDoors = ['sun', 'thunder', 'outdoors'] as const;

const byPlace: Readonly<Record<CautionPlace, ByQuantity>> = {
  'set-up': {
    'plant-height': [...planting, 'unknown-plants', 'heat-lamp', 'glass', 'sharp-tools'],
    rain: ['thunder', 'water', 'glass', 'sharp-tools', 'outdoors'],
    shadow: [...outOfDoors, 'sharp-tools'],
    // A root in a jar, a candle, an icicle: anything may be measured.
    length: ['beans', 'water', 'small-parts', 'soil', 'glass', 'sharp-tools'],
    'daily-kind': ['sun', 'thunder'],
  },
  shopping: {
    'plant-height': ['beans', 'treated-seed', 'small-parts', 'allergy', 'unknown-plants', 'glass'],
    rain: ['glass'],
    length: ['beans', 'small-parts', 'glass'],
  },
  sowing: {
    'plant-height': ['beans', 'treated-seed', 'small-parts', 'soil'],
    length: ['beans', 'small-parts', 'soil'],
  },
  reading: { 'plant-height': ['heat-lamp'] },
  outdoors: {
    'plant-height': outOfDoors,
    rain: ['thunder', 'outdoors'],
    shadow: outOfDoors,
    length: outOfDoors,
    'daily-kind': outOfDoors,
  },
  weekly: { rain: ['water'] },
};
