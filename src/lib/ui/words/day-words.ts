import type { DayState, Quantity } from '#core/journal';
import type { IconName } from '#ui/icons';

/** The few words of a quantity and of a day that stand where a reading is taken. */
export const quantityIcons: Readonly<Record<Quantity, IconName>> = {
  'plant-height': 'seedling',
  rain: 'drop',
  shadow: 'shadow',
  length: 'ruler',
  'daily-kind': 'tally',
};

/** For the child, on the day. */
export const childTasks: Readonly<Record<Quantity, string>> = {
  'plant-height': 'Measure your plant.',
  rain: 'Read the rain.',
  shadow: 'Measure the shadow.',
  length: 'Measure it.',
  'daily-kind': 'What kind of day is it?',
};

interface StateWords {
  readonly icon: IconName;
  /** On the child's stamp. */
  readonly stamp: string;
  /** In the log. */
  readonly inLog: string;
}

export const stateWords: Readonly<Record<DayState, StateWords>> = {
  'not-up-yet': { icon: 'not-up-yet', stamp: 'Not up yet', inLog: 'not up yet' },
  missed: { icon: 'missed', stamp: 'We missed it', inLog: 'missed' },
  'no-sun': { icon: 'no-sun', stamp: 'No sun', inLog: 'no sun' },
  trace: { icon: 'trace', stamp: 'Just a bit wet', inLog: 'trace: wet, too little to measure' },
  lost: { icon: 'lost', stamp: 'It is lost', inLog: 'lost' },
};

/** The stamps a day can get where it has no number, for each quantity. */
export const stampsByQuantity: Readonly<Record<Quantity, readonly DayState[]>> = {
  'plant-height': ['not-up-yet', 'missed', 'lost'],
  rain: ['trace', 'missed', 'lost'],
  shadow: ['no-sun', 'missed', 'lost'],
  length: ['missed', 'lost'],
  'daily-kind': ['missed'],
};

/** Whether a series day's state is one of the stamps. */
export const isDayState = (state: string): state is DayState => Object.hasOwn(stateWords, state);

/** Said when something was lost: it is no failure, it is what happened. */
export const lostWords = 'You found something out. Keep the log. You can start again.';
