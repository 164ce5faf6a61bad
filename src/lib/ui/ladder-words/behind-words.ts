import type { AskedQuestion } from '#core/questions';
import type { WordsById } from './template-words';

/** The three questions of which one cannot be answered, as a child hears them. */
export const offeredWords: Readonly<Record<string, string>> = {
  'ask-which-most': 'Which kind came most?',
  'ask-how-many-in-all': 'How many are there in all?',
  'ask-tallest-bar': 'Which bar is the tallest?',
  'ask-difference-of-two': 'How much taller is one bar than another?',
  'ask-most-often': 'Which number came most often?',
  'ask-smallest-to-largest': 'How far is it from smallest to largest?',
  'ask-when-highest': 'When was it highest?',
  'ask-change-between-two': 'How much did it change between two points?',
  'ask-why-so-many': 'Why did one kind come so often?',
  'ask-next-year': 'How many will there be next year?',
  'ask-why-so': 'Why did it turn out this way?',
  'ask-other-home': 'What would it be at another home?',
};

/** The child's words of the questions behind the data. */
export const behindWords: WordsById = {
  H1: {
    ask: () => 'Where did the ruler begin?',
    easier: () => 'Take a ruler. Show how we measured.',
    stretch: () => 'What if it began at another place? Draw both ways.',
  },
  H2: {
    ask: (blank) => `Look at ${blank('specimen')} on ${blank('day')}. Why is there no number?`,
    easier: () => 'Find that day in the log. What does it say?',
    stretch: () => 'What could help us not to miss a day?',
  },
  H3: {
    ask: (blank) =>
      `Two people measured on ${blank('day')}. One got ${blank('one')}. One got ${blank('other')}. Who is right?`,
    easier: () => 'Measure one thing with someone. Do you get the same?',
    stretch: () => 'Make a rule for the next time.',
  },
  H4: {
    ask: (blank) =>
      `Look at ${blank('from')} and ${blank('to')}. It was ${blank('inches')} both times. Did it stop? Which shows more, an inch or a centimetre?`,
    easier: (blank) =>
      `First it was ${blank('before')}. Then it was ${blank('after')}. Did it grow?`,
    stretch: () => 'What would half inches show?',
  },
  H5: {
    ask: () => 'Was our test fair? What was the same? What was different?',
    easier: () => 'Name one thing that was the same for all.',
    stretch: () => 'Could one more thing have been different?',
  },
  H6: {
    ask: () =>
      'These are practice numbers, not ours. What could trick someone who reads this graph?',
    easier: () => 'Look at one part, then the next. Which looks odd?',
    stretch: () => 'Draw it so that it tricks nobody.',
  },
  H7: {
    ask: (blank) => `${blank('specimen')} is the tallest. Is it the most healthy, too?`,
    easier: () => 'Look at the plants, not the numbers. What do you see?',
    stretch: () => 'Which measure helps with our question?',
  },
  H8: {
    ask: () => 'Whose weather is this? Which days does it show?',
    easier: () => 'Where did we stand when we looked?',
    stretch: () => 'Would a friend far away get the same graph?',
  },
  H9: {
    ask: (_, question) => `Which one can this graph not answer? ${offered(question)}`,
    easier: () => 'Take one of them. Can you point to it?',
    stretch: () => 'Think up one more that it cannot answer.',
  },
  H10: {
    ask: (blank) => `We crossed out a number on ${blank('day')}. Why did we keep it?`,
    easier: () => 'Find the old number. Can you still read it?',
    stretch: () => 'When could the old number help us?',
  },
};

const offered = ({ blanks }: AskedQuestion): string => {
  const list = blanks['offered']?.kind === 'order' ? blanks['offered'].things : [];
  return list
    .map((told) => (told.kind === 'idea' ? (offeredWords[told.idea] ?? '') : ''))
    .join(' ');
};
