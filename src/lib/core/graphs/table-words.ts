import type { DayState, Quantity } from '#core/journal';

/** What a table is of, in words. Not part of the public door. */
export const measuredWords: Readonly<Record<Quantity, string>> = {
  'plant-height': 'height',
  rain: 'rain',
  shadow: 'shadow',
  length: 'length',
  'daily-kind': 'days',
};

/** The states of a day as the kinds of a tally. Not part of the public door. */
export const stateKinds: Readonly<Record<DayState | 'number' | 'blank', string>> = {
  number: 'measured',
  'not-up-yet': 'not up yet',
  missed: 'missed',
  'no-sun': 'no sun',
  trace: 'a trace',
  lost: 'lost',
  blank: 'nothing written',
};

export const grewKinds = { grew: 'grew', same: 'did not grow', less: 'got shorter' } as const;
export const wetKinds = { wet: 'wet', dry: 'dry', trace: 'a trace' } as const;

/** The kind that the smallest kinds are put together as. */
export const togetherKinds = ['other', 'all others'] as const;
