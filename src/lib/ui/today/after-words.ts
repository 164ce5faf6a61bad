import type { LeafColour, StemStand } from '#core/journal';
import { formatMeasured, type Measured } from '#core/measure';

/** What is asked and said when today's reading is written. */
export const looksWords = {
  colour: 'What colour are the leaves?',
  stands: 'Does it stand up?',
  thanks: 'That is written down too.',
} as const;

export const colourWords: Readonly<Record<LeafColour, string>> = {
  green: 'green',
  'dark-green': 'dark green',
  'pale-green': 'pale green',
  yellow: 'yellow',
  white: 'white',
  brown: 'brown',
};

export const standWords: Readonly<Record<StemStand, string>> = {
  'by-itself': 'by itself',
  leans: 'it leans',
  'lies-down': 'it lies down',
};

/** A sealed guess beside what it came to be. */
export const sealOpensWords = (guessed: Measured, reading: Measured): string =>
  `You sealed a guess: ${formatMeasured(guessed)}. It is ${formatMeasured(reading)}.`;

export const becauseWords = 'You said why:';

export const putAwayWords = 'We know this. Put it away for a week.';

/** To the small tasks of the day. */
export const reviewLink = 'A few things to try';
