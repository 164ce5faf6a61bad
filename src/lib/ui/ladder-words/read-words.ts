import { howManyText, kindText } from './kind-text';
import type { WordsById } from './template-words';

/** Questions to read the data. */
export const readWords: WordsById = {
  R1: {
    ask: (blank) =>
      blank('measured') === 'rain'
        ? `Find ${blank('day')}. How much rain was there?`
        : `Find ${blank('day')}. How ${longWord(blank('measured'))} was ${blank('plant')}?`,
    easier: (blank) => `Put a finger on ${blank('day')}. Go up. Say the number.`,
    stretch: () => 'Was it on a line, or between two lines? How do you know?',
  },
  R2: {
    ask: (blank) => howManyText(blank('kind'), blank('counted')),
    easier: (blank) =>
      `Find the ${kindText(blank('kind'), blank('counted'))}. Point to each, and count.`,
    stretch: () => 'Can you see it fast? Tell how you do it.',
  },
  R3: {
    ask: (blank) =>
      blank('measured') === 'rain'
        ? `One day had ${blank('value')} of rain. Which day?`
        : `${blank('plant')} was ${blank('value')} one day. Which day?`,
    easier: (blank) => `Find ${blank('value')} on the side. Go across. Which day is there?`,
    stretch: () => 'Can one number come on two days? Tell how.',
  },
  R4: {
    ask: () => 'What does each picture stand for?',
    easier: () => 'Find the key. Read it out loud.',
    stretch: () => 'What would half a picture stand for?',
  },
  R5: {
    ask: () => 'What does each X mean?',
    easier: () => 'Point to one X. Tell how it got there.',
    stretch: () => 'What do the numbers under the line mean?',
  },
  R6: {
    ask: (blank) => {
      const [measured, value] = [blank('measured'), blank('value')];
      if (measured === 'growth') return `How many times did it grow ${value}?`;
      return measured === 'rain'
        ? `How many times was there ${value} of rain?`
        : `How many times did we get ${value}?`;
    },
    easier: (blank) => `Find ${blank('value')} on the line. Touch each X there, and count.`,
    stretch: () => 'Look for a number with no X. What does that mean?',
  },
  R7: {
    ask: () => 'The numbers on the side go up. By how much each time?',
    easier: () => 'Read the side numbers out loud, from the floor up.',
    stretch: () => 'How would the bars look with a bigger step?',
  },
  R8: {
    ask: (blank) =>
      blank('measured') === 'rain'
        ? 'Which days have no number for the rain? How can you tell?'
        : `Which days have no number for ${blank('plant')}? How can you tell?`,
    easier: () => 'Find one day with no number. Read its name.',
    stretch: () => 'Why might there be no number?',
  },
  R9: {
    ask: () => 'Find a dry day. Find a day with no number. How are they not the same?',
    easier: () => 'Find a dry day. What did we write?',
    stretch: () => 'What would you write for just a few drops?',
  },
  R10: {
    ask: (blank) =>
      `How long was the shadow at ${blank('time')}? Say it in ${unitText(blank('unit'))}.`,
    easier: (_, { blanks }) =>
      // As it is written on the graph, where a child looks for it.
      `Find ${blanks['time']?.kind === 'time' ? blanks['time'].time : 'it'} on the graph. Go up. Say the number.`,
    stretch: () => 'Was the stick longer than this shadow?',
  },
};

/** Heights are tall, other lengths long. */
const longWord = (measured: string): string => (measured === 'height' ? 'tall' : 'long');

const unitText = (unit: string): string =>
  ({ in: 'inches', ft: 'feet', yd: 'yards' })[unit] ?? unit;
