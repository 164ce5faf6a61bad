import type { AskedQuestion } from '#core/questions';
import type { WordsById } from './template-words';

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

/** The child's words of the questions behind the data. */
export const behindWords: WordsById = {
  H1: {
    ask: () => 'Where did the ruler begin?',
    easier: () => 'Act it out with a ruler.',
    stretch: () => 'Draw both ways. What would the other way change?',
  },
  H2: {
    ask: (blank) => `Look at ${blank('day')}. Why is there no mark?`,
    easier: () => 'Look in the log for that day.',
    stretch: () => 'What could help us not to miss a day?',
  },
  H3: {
    ask: (blank) =>
      `Two people measured. One got ${blank('one')}. One got ${blank('other')}. Who is right?`,
    easier: () => 'Measure it now, both of you.',
    stretch: () => 'Make a rule for next time.',
  },
  H4: {
    ask: (blank) =>
      `It was ${blank('inches')} both times. Did it stop? Which unit shows more, inch or centimetre?`,
    easier: () => 'Put the two rows side by side.',
    stretch: () => 'What would half inches show?',
  },
  H5: {
    ask: () => 'Was our test fair? What was the same? What was different?',
    easier: () => 'Sort what we did: same or different.',
    stretch: () => 'Could one more thing have been different?',
  },
  H6: {
    ask: () =>
      'These are practice numbers, not ours. What could trick someone who reads this graph?',
    easier: () => 'Look at two graphs. Which one is fair?',
    stretch: () => 'Draw it so that it tricks nobody.',
  },
  H7: {
    ask: () => 'One plant is taller. Is it more healthy too?',
    easier: () => 'Look at the leaves of both.',
    stretch: () => 'Which measure helps with our question?',
  },
  H8: {
    ask: () => 'Whose weather is this graph about?',
    easier: () => 'Where did we stand when we looked?',
    stretch: () => 'Would a friend far away get the same graph?',
  },
  H9: {
    ask: (_, q) => `Which one can this graph not answer? ${offered(q)}`,
    easier: () => 'Try each one. Point to where you see it.',
    stretch: () => 'Think up one more that it cannot answer.',
  },
  H10: {
    ask: (blank) => `We crossed a number out on ${blank('day')}. Why did we keep it?`,
    easier: () => 'Find the old number. Can you still read it?',
    stretch: () => 'When could the old number help us?',
  },
};
