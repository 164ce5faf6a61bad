import type { AskedQuestion, Told } from '#core/questions';

/**
 * What is said of the questions beyond the data: to the child, and of the answers to the grown-up.
 * `tell` writes a told thing for a child.
 */
type Say = (question: AskedQuestion, tell: (told: Told) => string) => string;
export interface IdeaWords {
  readonly text: Say;
  readonly easier: Say;
  readonly stretch: Say;
}

type BeyondId = 'Y1' | 'Y2' | 'Y3' | 'Y4' | 'Y5' | 'Y6' | 'Y7' | 'Y8' | 'Y9' | 'Y10';

const blank = ({ blanks }: AskedQuestion, name: string, tell: (told: Told) => string): string => {
  const told = blanks[name];
  if (!told) throw new Error(`A question without its ${name}`);
  return tell(told);
};
const thing = (question: AskedQuestion, tell: (told: Told) => string): string => {
  const { thing: what, whose } = question.blanks;
  if (what?.kind !== 'word' || what.word === 'pot') return 'its pot';
  return whose ? `the hand of ${tell(whose)}` : 'your hand';
};

export const beyondWords: Readonly<Record<BeyondId, IdeaWords>> = {
  Y1: {
    text: (q, tell) =>
      `Think of ${blank(q, 'specimen', tell)} on ${blank(q, 'day', tell)}. How tall will it be? Why?`,
    easier: () => 'Will it be the same, more, or less?',
    stretch: () => 'Say two numbers. It will be between them.',
  },
  Y2: {
    text: (q, tell) =>
      `We missed ${blank(q, 'day', tell)}. How tall was ${blank(q, 'specimen', tell)}, do you think?`,
    easier: () => 'Look at the day before and the day after.',
    stretch: () => 'Why can we not be sure?',
  },
  Y3: {
    text: (q, tell) =>
      `Think of ${blank(q, 'specimen', tell)} on ${blank(q, 'day', tell)}. Will it be as tall as ${thing(q, tell)}? Why?`,
    easier: () => 'Hold the ruler up. Is it close?',
    stretch: () => 'What could change your mind?',
  },
  Y4: {
    text: () => 'Think of this graph next month. What might change? What might stay the same?',
    easier: () => 'Pick one row. Might it change?',
    stretch: () => 'What if we lived in another town?',
  },
  Y5: {
    text: (q, tell) => `Could it grow ${blank(q, 'more', tell)} more? How long might that take?`,
    easier: () => 'Look at a full-grown plant. How tall is it?',
    stretch: () => 'Where was it slow? Where was it fast?',
  },
  Y6: {
    text: () => 'Think of one more seed from our pack. Would it grow to the same heights?',
    easier: () => 'Look at two plants. Are they the same?',
    stretch: () => 'How many seeds would you sow to find out?',
  },
  Y7: {
    text: () => 'Someone measures it again right now. What number could they get?',
    easier: () => 'Look at the plot. Where are the marks?',
    stretch: () => 'Which number would you keep? Why the middle one?',
  },
  Y8: {
    text: () => 'What kind of day will it most likely be? Can we be sure?',
    easier: () => 'Which kind came most? Is it likely or not?',
    stretch: () => 'How do people who tell the weather know more?',
  },
  Y9: {
    text: (q, tell) => `Where will the tip of the shadow be at ${blank(q, 'time', tell)}?`,
    easier: () => 'Put a stone where you think.',
    stretch: () => 'How long will it be?',
  },
  Y10: {
    text: () => 'When might the next leaves show? Say from when to when.',
    easier: () => 'Look at the days with new leaves.',
    stretch: () => 'Tell how you know.',
  },
};

/** What to accept, for the grown-up. */
export const beyondIdeas: Readonly<Record<string, string>> = {
  'probably-not-yet':
    'Probably not yet. Accept “no” or “I cannot tell” with a reason from the growth of late.',
  'might-be-as-tall':
    'It might. Accept yes, no or “cannot tell” when a reason from the log follows.',
  'seasons-and-chance':
    'The season may change it, and so may chance. Accept one thing that may change and one that may stay.',
  'plants-slow-down':
    'Possible, but not at the same pace: plants grow slowly, then fast, then slowly again. No exact date is needed.',
  'similar-not-same': 'Similar, not the same. Seeds of one packet differ.',
  'longer-and-further-round': 'Longer, and further round the stick in the way it has been moving.',
  'shorter-and-further-round':
    'Shorter, and further round the stick in the way it has been moving.',
};

/** What each usual answer shows, for the grown-up. */
export const beyondSlips = {
  'a-wish': 'A wish or a number without a reason. Ask what the last days tell.',
  decimals: 'A number finer than the ruler was read to.',
  'midpoint-as-fact': 'The number half-way is said as if it had been measured. It is a guess.',
  'sure-of-it': 'Sure of what nobody can know yet. Ask what could turn out otherwise.',
  'nothing-changes': 'Takes these days for all days.',
  'straight-on': 'Goes on in a straight line for ever. Look at where it was slow.',
  'exactly-the-same': 'Expects every seed to do the same.',
  'one-number': 'Expects measuring to give one number only.',
  'same-place': 'Does not use how the shadow has moved.',
  'one-exact-day': 'Names one day, where the log only tells of a span.',
} as const;
