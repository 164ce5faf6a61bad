import type { AskedQuestion, Told } from '#core/questions';
import type { IdeaWords } from './beyond-words';

type BehindId = 'H1' | 'H2' | 'H3' | 'H4' | 'H5' | 'H6' | 'H7' | 'H8' | 'H9' | 'H10';

const blank = ({ blanks }: AskedQuestion, name: string, tell: (told: Told) => string): string => {
  const told = blanks[name];
  if (!told) throw new Error(`A question without its ${name}`);
  return tell(told);
};

/** The three questions of which one cannot be answered, as a child hears them. */
export const offeredWords: Readonly<Record<string, string>> = {
  'ask-which-most': 'Which kind came most?',
  'ask-how-many-in-all': 'How many are there in all?',
  'ask-tallest-bar': 'Which bar is the tallest?',
  'ask-difference-of-two': 'How far apart are two bars?',
  'ask-most-often': 'Which number came most often?',
  'ask-smallest-to-largest': 'How far is it from smallest to largest?',
  'ask-when-highest': 'When was it highest?',
  'ask-change-between-two': 'How much did it change between two points?',
  'ask-why-so-many': 'Why did one kind come so often?',
  'ask-next-year': 'How many will there be next year?',
  'ask-why-so': 'Why did it turn out this way?',
  'ask-other-home': 'What would it be at another home?',
};

const offered = ({ blanks }: AskedQuestion): string => {
  const list = blanks.offered?.kind === 'order' ? blanks.offered.things : [];
  return list
    .map((told) => (told.kind === 'idea' ? (offeredWords[told.idea] ?? '') : ''))
    .join(' ');
};

export const behindWords: Readonly<Record<BehindId, IdeaWords>> = {
  H1: {
    text: () => 'Where did the ruler begin?',
    easier: () => 'Act it out with a ruler.',
    stretch: () => 'Draw both ways. What would the other way change?',
  },
  H2: {
    text: (q, tell) => `Look at ${blank(q, 'day', tell)}. Why is there no mark?`,
    easier: () => 'Look in the log for that day.',
    stretch: () => 'What could help us not to miss a day?',
  },
  H3: {
    text: (q, tell) =>
      `Two people measured. One got ${blank(q, 'one', tell)}. One got ${blank(q, 'other', tell)}. Who is right?`,
    easier: () => 'Measure it now, both of you.',
    stretch: () => 'Make a rule for next time.',
  },
  H4: {
    text: (q, tell) =>
      `It was ${blank(q, 'inches', tell)} both times. Did it stop? Which unit shows more, inch or centimetre?`,
    easier: () => 'Put the two rows side by side.',
    stretch: () => 'What would half inches show?',
  },
  H5: {
    text: () => 'Was our test fair? What was the same? What was different?',
    easier: () => 'Sort what we did: same or different.',
    stretch: () => 'Could one more thing have been different?',
  },
  H6: {
    text: () =>
      'These are practice numbers, not ours. What could trick someone who reads this graph?',
    easier: () => 'Look at two graphs. Which one is fair?',
    stretch: () => 'Draw it so that it tricks nobody.',
  },
  H7: {
    text: () => 'One plant is taller. Is it more healthy too?',
    easier: () => 'Look at the leaves of both.',
    stretch: () => 'Which measure helps with our question?',
  },
  H8: {
    text: () => 'Whose weather is this graph about?',
    easier: () => 'Where did we stand when we looked?',
    stretch: () => 'Would a friend far away get the same graph?',
  },
  H9: {
    text: (q) => `Which one can this graph not answer? ${offered(q)}`,
    easier: () => 'Try each one. Point to where you see it.',
    stretch: () => 'Think up one more that it cannot answer.',
  },
  H10: {
    text: (q, tell) => `We crossed a number out on ${blank(q, 'day', tell)}. Why did we keep it?`,
    easier: () => 'Find the old number. Can you still read it?',
    stretch: () => 'When could the old number help us?',
  },
};

/** What to accept, for the grown-up. */
export const behindIdeas: Readonly<Record<string, string>> = {
  'soil-line': 'At the soil, beside the stem: not at the bottom of the pot.',
  'we-missed-it':
    'Nobody measured on that day. No mark does not mean 0, and not that nothing grew.',
  'both-careful':
    'Both may be: it lay between two marks. Read again together, or keep a rule for half-way.',
  'smaller-unit': 'A centimetre: the unit is smaller, so a small change shows sooner.',
  'one-difference': 'Fair as planned: one thing was different and the rest was kept the same.',
  'second-difference':
    'Not quite: a second thing became different too. Say which, and go on honestly.',
  'flaw-P3': 'The pictures of one row are smaller, so the row looks like less than it is.',
  'flaw-B7': 'One bar is fatter, so it looks like more than it is.',
  'flaw-L4': 'The jumps of the number line are not all the same size.',
  'flaw-T6': 'The jumps up the side are not all the same size.',
  'look-at-leaves-and-colour':
    'Not always. A plant with little light is often tall, pale and weak: look at leaves, colour and whether it stands.',
  'our-place-these-dates': 'Ours: our own place, on these dates only.',
  'honest-record':
    'So that the record stays honest: the old number, or why it changed, may matter later.',
  'ask-why-so-many': 'The graph says how many, never why.',
  'ask-next-year': 'The graph tells of these days only.',
  'ask-why-so': 'The graph says what was measured, never why.',
  'ask-other-home': 'The graph is about our own things only.',
};

/** What each usual answer shows, for the grown-up. */
export const behindSlips = {
  'bottom-of-pot': 'Begins at the bottom of the pot: the pot would be measured too.',
  'did-not-grow': 'Takes a day without a number for a day without growth.',
  'older-is-right': 'Lets the older person decide, not the ruler.',
  'bigger-unit': 'Thinks that a bigger unit shows more.',
  'the-plants': 'Names the plants, not what was done to them.',
  neatness: 'Looks at neatness, not at what the graph makes one believe.',
  'taller-is-healthier': 'Takes height for health.',
  everywhere: 'Thinks that the graph tells of every place.',
  'hardest-sum': 'Picks the one that is hardest to work out: it can be answered.',
  'forgot-to-erase': 'Thinks that it is a mistake of neatness. Scientists cross out and keep.',
} as const;
