import { addDays, formatDay, type CivilDay } from '#core/calendar';
import type { OpenPrediction, PredictionOfferError } from '#core/growth';
import type { Quantity } from '#core/journal';
import { exactPerUnit, formatMeasured, type Measured } from '#core/measure';

/** What a child reads on the page of guesses for days to come: ten words or fewer, never "wrong". */
export const aheadWords = {
  name: 'A guess for later',
  back: 'More to try',
  whoGuesses: 'Who has a guess?',
  steps: {
    day: 'Which day will you guess?',
    number: 'How long will it be?',
    because: 'Why do you think so?',
    seal: 'Is this your guess?',
  },
  howTall: 'How tall will it be?',
  asThisWeek: 'What if it keeps on as it did this week?',
  myGuess: 'My guess',
  next: 'Go on',
  goBack: 'Go back',
  frame: 'I think so because',
  starts: 'Ways to start',
  sayWhy: 'Say why first. You can tap a start.',
  sealIt: 'Seal it',
  noPeeking: 'No one can see it till that day.',
  sealed: 'Your guess is sealed.',
  dayOff: 'You do not measure on that day.',
  hasGuess: 'Your guess is sealed.',
  allSealed: 'All your guesses are sealed. Now wait and see.',
  yours: 'Your guesses',
  itsDay: 'This is the day. Measure it, and the guess opens.',
  takeBack: 'Take it back',
  tookBack: 'You took it back. It is gone.',
  older: 'Guesses from before',
  noReading: 'We did not measure that day.',
  talk: 'What would you think now?',
  talkExact: 'How did you think of it?',
  measureNow: 'Measure it now',
} as const;

/** How far off the day is. */
export const daysAheadWords = (daysAhead: number): string =>
  daysAhead === 1 ? 'Tomorrow' : `In ${daysAhead} days`;

/** A day to be read aloud: `Tuesday 10 March`. */
export const dayInFull = (day: CivilDay): string => formatDay(day, 'long').replace(/ \d+$/, '');

/** A length inside a sentence: "in" alone would be read as another word. */
export const lengthWords = (measured: Measured): string =>
  formatMeasured(measured).replace(
    / in$/,
    measured.exact === exactPerUnit('in') ? ' inch' : ' inches',
  );

/** What is still needed before a day to come can be guessed: one kind sentence or two. */
export function notYetWords(
  error: PredictionOfferError,
  lastDay: CivilDay | undefined,
  today: CivilDay,
): string {
  switch (error.kind) {
    case 'not-this-quantity':
      return 'We guess days to come for things that grow.';
    case 'ended':
      return 'This log is done. There is no day to guess.';
    case 'too-few': {
      const more = error.need - error.have;
      return `Measure on ${more === 1 ? '1 more day' : `${more} more days`} first.`;
    }
    case 'too-short': {
      const enough = lastDay ? addDays(lastDay, error.need - error.days) : today;
      return enough <= today
        ? 'Measure it first. Then you can guess.'
        : `Measure it on ${dayInFull(enough)}. Then you can guess.`;
    }
    case 'measure-first':
      return 'Measure it first. Then you can guess.';
  }
}

/** Whether measuring now is what helps. */
export const needsMeasuring = ({ kind }: PredictionOfferError): boolean =>
  kind === 'too-few' || kind === 'too-short' || kind === 'measure-first';

/** When a sealed guess opens. */
export const opensWords = (forDay: CivilDay): string => `It opens on ${dayInFull(forDay)}.`;

/** The guess held against what was read; kind, and never a score. */
export function comparedWords(guess: OpenPrediction, quantity: Quantity): string {
  const said = `You guessed ${lengthWords(guess.measured)}.`;
  if (!guess.reading) return `${said} ${aheadWords.noReading}`;
  const was = `${said} It was ${lengthWords(guess.reading)}.`;
  if (!guess.size || !guess.direction) return was;
  if (guess.direction === 'exact') return `${was} Just the same!`;
  const longer = quantity === 'plant-height' ? 'taller' : 'longer';
  const than =
    guess.direction === 'too-short'
      ? `It was ${longer} than you thought.`
      : `It was less ${quantity === 'plant-height' ? 'tall' : 'long'} than you thought.`;
  return `${was} ${sizeWords[guess.size]} ${than}`;
}

const sizeWords: Readonly<Record<NonNullable<OpenPrediction['size']>, string>> = {
  'very-close': 'Very close.',
  close: 'Close.',
  far: 'Not so close this time.',
};

/** Ways to begin a because. They are what a child would say, and the child may say something else. */
export const becauseBeginnings = (quantity: Quantity): readonly string[] => [
  ...(quantity === 'plant-height'
    ? ['it grew a lot this week', 'it grew just a bit this week', 'it grows less now than before']
    : ['it went up this week', 'it went down this week', 'it did not change a lot']),
  'it was warm',
  'it was cold',
  ...(quantity === 'plant-height' ? ['it gets a lot of sun'] : []),
  'the strips show it',
  'it is just my guess',
];
