import type { RulerSlip } from '#core/lessons';

interface SlipWords {
  /** What the number shows that is right. */
  readonly right: string;
  /** Where to look, the idea, and doing it beside a grown-up. None tells the number. */
  readonly hints: readonly [place: string, idea: string, besideGrownUp: string];
}

/** One helping question for each slip. */
export const slipWords: Readonly<Record<RulerSlip, SlipWords>> = {
  'read-the-end': {
    right: 'You found where the strip ends.',
    hints: [
      'Where does it begin? Put a finger there.',
      'Count the spaces from where it begins.',
      'Lay cubes on it with a grown-up. Count the cubes.',
    ],
  },
  'counted-marks': {
    right: 'You began where the strip begins.',
    hints: [
      'Look at the first mark. Is it a space?',
      'Count the spaces, not the marks.',
      'Hop from mark to mark with a grown-up. Count hops.',
    ],
  },
  'counted-small-marks': {
    right: 'You saw the small parts.',
    hints: [
      'Look at the small parts near the end.',
      'Count the small spaces, not the small marks.',
      'Point at each small space with a grown-up. Count.',
    ],
  },
  'small-for-whole': {
    right: 'You counted each part.',
    hints: [
      'Find two numbers side by side. Look between them.',
      'Which spaces are big? Count those first.',
      'Colour the big spaces with a grown-up. Then count.',
    ],
  },
  'left-part-off': {
    right: 'You found the big space before the end.',
    hints: [
      'Look at the end. Is it on the number?',
      'There is a part after the number. Say it too.',
      'Trace the last part with a grown-up. Name it.',
    ],
  },
  'next-whole': {
    right: 'You found the part.',
    hints: [
      'Look at the end. Which number is before it?',
      'Say the number before it first. Then the part.',
      'Slide a finger from 0 with a grown-up. Stop there.',
    ],
  },
  'counted-back': {
    right: 'You counted the parts.',
    hints: [
      'Look at the two numbers. Which is smaller?',
      'Count the parts up from the smaller number.',
      'Walk up the ruler with a grown-up. Count on.',
    ],
  },
  'farther-whole': {
    right: 'You found a number beside the end.',
    hints: [
      'Look at the end. Which number is close?',
      'Find the middle of the space. Is it past it?',
      'Cut the space with a grown-up. Which way is less?',
    ],
  },
};

/** A number of which nothing is known. */
export const otherNumberWords: SlipWords['hints'] = [
  'Where does it begin? Where does it end?',
  'Count each space one time.',
  'Count with a grown-up. Tap each space.',
];

/** When the two numbers on both sides of the end are not found yet. */
export const twoNumbersHints: SlipWords['hints'] = [
  'Look at the end of the strip.',
  'Which number comes before it? Which comes after?',
  'Slide a finger to the end with a grown-up.',
];

/** What went well, said plainly. */
export const rulerRightWords = {
  'off-zero': 'Yes. That is how many spaces it covers.',
  'between-marks': 'Yes. You looked close at the end.',
} as const;
