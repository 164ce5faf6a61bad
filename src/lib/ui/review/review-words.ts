import type { BlockDeed, ReviewPick, SumSlip, SumUnknown } from '#core/lessons';
import type { IconName } from '#ui/icons';

/** What a child reads in the daily review: one thing at a time, and never a mark. */
export const reviewWords = {
  name: 'A few things to try',
  place: (at: number, all: number): string => `Thing ${at} of ${all}`,
  paper: 'On paper',
  practice: 'Practice numbers, not ours',
  fromLog: 'From our log',
  skip: 'Skip this one',
  next: 'Go on',
  say: 'That is it',
  mine: 'My answer',
  pickOne: 'Pick one.',
  yes: 'Yes. That is it.',
  lookAgain: 'Look once more.',
  together: 'Let us look at it side by side.',
  comesAgain: 'It comes back on the next school day.',
  answerIs: 'It is',
  measure: {
    ask: 'First, take your measure of the day.',
    go: (name: string): string => `Measure: ${name}`,
    later: 'I do it later',
  },
  ruler: {
    'off-zero': 'How long is the strip?',
    nearest: 'Which number is nearest to the end?',
    part: 'How long is the strip? Say the part too.',
    starts: 'The strip begins at 0.',
  },
  choice: {
    ask: 'What do you like to try?',
    picks: {
      ruler: 'Read a ruler',
      sum: 'Add or take away',
      question: 'Read a graph',
    } satisfies Record<ReviewPick, string>,
    stop: 'I stop here',
  },
  help: {
    blocks: 'Show me blocks',
    jumps: 'Show me jumps',
    hideBlocks: 'Put the blocks away',
    hideJumps: 'Put the jumps away',
  },
  end: {
    done: 'You thought well about numbers of your own.',
    stop: 'That is all for today.',
    more: 'One more if you like',
    today: 'To my day',
  },
} as const;

/** The picture beside each thing a child can choose. */
export const pickIcons: Readonly<Record<ReviewPick, IconName>> = {
  ruler: 'ruler',
  sum: 'plus',
  question: 'bar-graph',
};

/** One helping question for each slip of a sum. None tells the number. */
export const sumHelpWords: Readonly<Record<SumSlip, string>> = {
  'gave-a-number': 'The story tells that one. What does it ask?',
  'added-instead': 'Will it be more, or less? Look at the story.',
  'took-away-instead': 'They go side by side. Will it be more?',
  'smaller-from-larger': 'Look at the ones. Are there enough to take?',
  'ten-off': 'Count the tens once more. Did one move?',
  'one-off': 'You are close. Hop along and count the hops.',
};

/** The same for a number of which nothing is known, by what is asked. */
export const otherSumWords: Readonly<Record<SumUnknown, string>> = {
  start: 'Begin at the end. Which way do you go?',
  change: 'Hop from the first to the last. How far?',
  result: 'Begin with the first. Hop on from there.',
};

/** What is done with the blocks. */
export const blockWords: Readonly<Record<Exclude<BlockDeed, 'taken-away'>, string>> = {
  laid: 'Lay it out.',
  'put-together': 'Put them all on one heap.',
  'ten-made': 'Ten ones make a ten.',
  'hundred-made': 'Ten tens make a hundred.',
  'ten-broken': 'Break one ten into ten ones.',
  'hundred-broken': 'Break a hundred into ten tens.',
};

/** What was taken, and what is left. */
export const takenWords = (number: number): string => `Take away ${number}. This is left.`;

/** What to take, before it was taken. */
export const takeWords = (number: number): string => `Now take away ${number}. What is left?`;

/** How many blocks there are, for those who hear them. */
export const blocksText = (hundreds: number, tens: number, ones: number): string =>
  [
    ...(hundreds > 0 ? [counted(hundreds, 'hundred', 'hundreds')] : []),
    ...(tens > 0 ? [counted(tens, 'ten', 'tens')] : []),
    ...(ones > 0 || hundreds + tens === 0 ? [counted(ones, 'one', 'ones')] : []),
  ].join(', ');

const counted = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;
