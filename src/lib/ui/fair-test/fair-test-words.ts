import type { CivilDay } from '#core/calendar';
import { formatDay } from '#core/calendar';
import type { LeafColour, SecondMeasure, StemStand } from '#core/journal';
import type { DifferenceChoice, LightTrapNeed } from '#core/series';

/** What a child reads about a fair test: ten words or fewer, first-grade words, never "wrong". */
export const fairTestWords = {
  name: 'A fair test',
  plan: 'Our plan',
  different: 'Just one thing is not the same.',
  ownDifferent: 'What is it?',
  sayDifferent: 'Tap the one thing first.',
  same: 'All this is the same.',
  tickSame: 'Tick each thing that is the same.',
  expect: 'What do you think will happen?',
  weThink: 'We think',
  second: 'What else will you look at?',
  alsoLook: 'We look at this, too.',
  needSecond: 'Tick one more thing to look at.',
  threeSeeds: 'Put three seeds in each pot.',
  write: 'Write the plan',
  isSet: 'The plan is set. We have begun to measure.',
  elseDifferent: 'Was there one more thing not the same?',
  elseWhat: 'What was it?',
  elseWhen: 'Which day was it?',
  elseWho: 'Which plant?',
  sayElse: 'Say what it was first.',
  sayDay: 'Which day was it? Choose a day.',
  eachPlant: 'All of them',
  sideBySide: 'Side by side',
  lead: 'Which one leads?',
  noLead: 'No day yet when both were measured.',
  looks: 'How do they look?',
  noteLooks: 'Look at them now.',
  whichPlant: 'Which plant do you look at?',
  colour: 'What colour are its leaves?',
  stands: 'How does it stand?',
  sayLook: 'Tap what you see first.',
  talk: 'Talk about it',
  neverUp: 'It never came up. We found that out.',
  notUpYet: 'It is not up yet.',
} as const;

/** The one thing that differs, in a word. */
export const differenceWords: Readonly<Record<DifferenceChoice, string>> = {
  light: 'light',
  water: 'water',
  soil: 'soil',
  seed: 'seed',
  place: 'place',
  'something-else': 'something else',
};

export const secondWords: Readonly<Record<SecondMeasure, string>> = {
  leaves: 'How many leaves?',
  colour: 'What colour?',
  stands: 'Does it stand?',
};

export const colourWords: Readonly<Record<LeafColour, string>> = {
  green: 'green',
  'dark-green': 'dark green',
  'pale-green': 'pale green',
  yellow: 'yellow',
  white: 'white',
  brown: 'brown',
};

export const standWords: Readonly<Record<StemStand, string>> = {
  'by-itself': 'stands by itself',
  leans: 'leans',
  'lies-down': 'lies down',
};

/** What to say to each other, one after the other: both plants, one day, more days, then how sure. */
export const talkWords = (talk: {
  readonly pots: number;
  /** A day on which both were measured. */
  readonly day: CivilDay | null;
  readonly severalDays: boolean;
}): readonly string[] => [
  'Tell about one plant. Then tell about the next.',
  ...(talk.day ? [`Which led on ${formatDay(talk.day, 'short')}? How much?`] : []),
  ...(talk.severalDays ? ['Look at more days. Does the lead grow?'] : []),
  'Is one pair of seeds enough?',
  'Would your friends find the same?',
  talk.pots === 2 ? 'Our two pots tell about our two pots.' : 'Our pots tell about just our pots.',
];

/** Asked of a light test when it can be answered. */
export const tallerWords = 'Which is taller? Which looks well and strong?';

/** What a light test still waits for. */
export const needWords: Readonly<Record<LightTrapNeed, string>> = {
  'second-measure': 'Look at the leaves, too. Tall can be weak.',
  'three-weeks': 'Wait three weeks. Then ask which did well.',
};
