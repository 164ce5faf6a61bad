import type { AskedQuestion } from '#core/questions';
import type { Blank, WordsById } from './template-words';

const thing = (blank: Blank, { blanks }: AskedQuestion): string => {
  const { thing: what, whose } = blanks;
  if (what?.kind !== 'word' || what.word === 'pot') return 'its pot';
  return whose ? `the hand of ${blank('whose')}` : 'your hand';
};

/** The child's words of the questions beyond the data. */
export const beyondWords: WordsById = {
  Y1: {
    ask: (blank) => `Think of ${blank('specimen')} on ${blank('day')}. How tall will it be? Why?`,
    easier: () => 'Will it be the same, more, or less?',
    stretch: () => 'Say two numbers. It will be between them.',
  },
  Y2: {
    ask: (blank) => `We missed ${blank('day')}. How tall was ${blank('specimen')}, do you think?`,
    easier: () => 'Look at the day before and the day after.',
    stretch: () => 'Why can we not be sure?',
  },
  Y3: {
    ask: (blank, q) =>
      `Think of ${blank('specimen')} on ${blank('day')}. Will it be as tall as ${thing(blank, q)}? Why?`,
    easier: () => 'Hold the ruler up. Is it close?',
    stretch: () => 'What could change your mind?',
  },
  Y4: {
    ask: () => 'Think of this graph next month. What might change? What might stay the same?',
    easier: () => 'Pick one row. Might it change?',
    stretch: () => 'What if we lived in another town?',
  },
  Y5: {
    ask: (blank) => `Could it grow ${blank('more')} more? How long might that take?`,
    easier: () => 'Look at a full-grown plant. How tall is it?',
    stretch: () => 'Where was it slow? Where was it fast?',
  },
  Y6: {
    ask: () => 'Think of one more seed from our pack. Would it grow to the same heights?',
    easier: () => 'Look at two plants. Are they the same?',
    stretch: () => 'How many seeds would you sow to find out?',
  },
  Y7: {
    ask: () => 'Someone measures it again right now. What number could they get?',
    easier: () => 'Look at the plot. Where are the marks?',
    stretch: () => 'Which number would you keep? Why the middle one?',
  },
  Y8: {
    ask: () => 'What kind will the next day most likely be? Can we be sure?',
    easier: () => 'Which kind came most? Is it likely or not?',
    stretch: () => 'How do people who tell the weather know more?',
  },
  Y9: {
    ask: (blank) => `Where will the tip of the shadow be at ${blank('time')}?`,
    easier: () => 'Put a stone where you think.',
    stretch: () => 'How long will it be?',
  },
  Y10: {
    ask: () => 'When might the next leaves show? Say from when to when.',
    easier: () => 'Look at the days with new leaves.',
    stretch: () => 'Tell how you know.',
  },
};
