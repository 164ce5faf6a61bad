import { formOf } from '#core/questions';
import type { Blank, WordsById } from './template-words';

/** The child's words of the questions beyond the data. */
export const beyondWords: WordsById = {
  Y1: {
    ask: (blank) =>
      `Think of ${blank('specimen')} on ${blank('day')}. How ${long(blank)} might it be? Why?`,
    easier: () => 'Will it be the same, more, or less?',
    stretch: () => 'Say two numbers. It will be between them.',
  },
  Y2: {
    ask: (blank) =>
      `We missed ${blank('day')}. How ${long(blank)} was ${blank('specimen')}, do you think?`,
    easier: () => 'Look at the number before and the number after.',
    stretch: () => 'Why can we not be sure?',
  },
  Y3: {
    ask: (blank, question) =>
      `${
        formOf(question) === 'hand-span'
          ? `${ofWhom(blank('whose'))} hand is ${blank('length')} wide.`
          : `The pot is ${blank('length')} tall.`
      } Will ${blank('specimen')} be as ${long(blank)} on ${blank('day')}? Why?`,
    easier: (blank) => `Find ${blank('length')} on a ruler. Find our last number. Are they close?`,
    stretch: () => 'What could change your mind?',
  },
  Y4: {
    ask: () => 'Think of this graph next month. What might change? What might stay the same?',
    easier: () => 'Pick one kind of day. Might it change?',
    stretch: () => 'What if we lived in another town?',
  },
  Y5: {
    ask: (blank) =>
      `Could ${blank('specimen')} grow ${blank('more')} more? How long might that take?`,
    easier: () => 'Think of a plant that is all grown up. How tall is it?',
    stretch: () => 'Look at the graph. Where was it slow? Where was it fast?',
  },
  Y6: {
    ask: () => 'Think of one more seed from our pack. Would it grow just the same?',
    easier: () => 'Look at two leaves. Are they just the same?',
    stretch: () => 'How many seeds would you sow to find out?',
  },
  Y7: {
    ask: (blank) =>
      `Someone measures ${blank('specimen')} again right now. What number could they get?`,
    easier: () => 'Look at the X marks. Where are they?',
    stretch: () => 'Which number is the best to keep? Why?',
  },
  Y8: {
    ask: () => 'Which kind of day is most likely next? Can we be sure?',
    easier: () => 'Which kind of day came the most?',
    stretch: () => 'What can you look at to guess better?',
  },
  Y9: {
    ask: (blank) => `Think of that day at ${blank('time')}. Where would the tip of the shadow be?`,
    easier: () => 'Would it be longer or shorter?',
    stretch: () => 'How long would it be? Say two numbers.',
  },
  Y10: {
    ask: (blank) =>
      `When might ${blank('specimen')} get its next leaves? Name a first day and a last day.`,
    easier: () => 'Find the days with new leaves. Count the days between.',
    stretch: () => 'Which day is the most likely? Why?',
  },
};

const long = (blank: Blank): string => (blank('measured') === 'height' ? 'tall' : 'long');

const ofWhom = (name: string): string => `${name}’s`;
