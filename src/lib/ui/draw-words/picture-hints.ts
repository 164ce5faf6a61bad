import type { MistakeId } from '#core/graphs';
import type { HintLadder } from './hint-ladder';

/** Help with the numbered mistakes of a picture graph, in a child's words. */
export const pictureHints: Readonly<Record<Extract<MistakeId, `P${number}`>, HintLadder>> = {
  P1: [
    'Look at the top of your page.',
    'What would a guest need to read first?',
    'Tell a grown-up what your graph shows. Write that at the top.',
  ],
  P2: [
    'Look for your key.',
    'How will we know what each picture stands for?',
    'Tell a grown-up how many each picture means. Write it in your key.',
  ],
  P3: [
    'Look at how big your pictures are.',
    'Do they all take the same space?',
    'Lay a finger on each picture with a grown-up. Make them match.',
  ],
  P4: [
    'Look at the gaps in your rows.',
    'Which row looks long? Which row has the most?',
    'Line them up like seats with a grown-up. Then count each row.',
  ],
  P5: [
    'Look at where your rows begin.',
    'Do they all start at the same line?',
    'Lay a ruler at the start with a grown-up. Move your rows to it.',
  ],
  P6: [
    'Look at this row once more.',
    'Does it say the same as your table?',
    'Touch and count each one with a grown-up. Then read your table.',
  ],
  P7: [
    'Look at your key.',
    'How much does each picture count for?',
    'Read your key out loud with a grown-up. Count a row by it.',
  ],
  P8: [
    'Look at your key, then at this row.',
    'What does just one picture stand for?',
    'Make groups like your key with a grown-up. Draw one picture for each group.',
  ],
  P9: [
    'Look at the end of this row.',
    'What is half of the number in your key?',
    'Fold a paper picture with a grown-up. What does half of it mean?',
  ],
  P10: [
    'Look at the name by each row.',
    'Does each row go with its name?',
    'Read a name with a grown-up. Find it in your table, then here.',
  ],
  P11: [
    'Look at the names of your rows.',
    'Is there a place for each kind? Did any kind never come?',
    'Read your table with a grown-up. Tick each name you find here.',
  ],
  P12: [
    'Look at your key, then at each row.',
    'Will the key work for each row?',
    'Read the key by each row with a grown-up. Does it fit?',
  ],
  P13: [
    'Look at what your rows are about.',
    'Do we count things here? Or do we measure?',
    'Talk with a grown-up. Which graph is good for this?',
  ],
};

/** What is said otherwise where the child's own tally stands beside the paper. */
export const pictureHintsByTally: Readonly<Partial<Record<MistakeId, HintLadder>>> = {
  P6: [
    'Look at this row once more.',
    'Does it say the same as your tally?',
    'Touch and count each one with a grown-up. Then count your tally.',
  ],
};
