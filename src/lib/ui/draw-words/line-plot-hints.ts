import type { MistakeId } from '#core/graphs';
import type { HintLadder } from './hint-ladder';

/** Hints for line plots. A mistake is also told for its nearest kin, so the words fit both. */
export const linePlotHints: Readonly<Record<Extract<MistakeId, `L${number}`>, HintLadder>> = {
  L1: [
    'Look at the numbers on your line.',
    'What do they stand for? The day, or how long?',
    'With a grown-up, read your list. Find each size on the line.',
  ],
  L2: [
    'Look at your list. Then look at your marks.',
    'How many times did you measure? How many marks are there?',
    'With a grown-up, touch each size in your list. Touch its mark.',
  ],
  L3: [
    'Look at the numbers on your line.',
    'What number comes next? Give it a place.',
    'Count along the line with a grown-up. Does each number have a place?',
  ],
  L4: [
    'Look at the space from tick to tick.',
    'Is each jump on the line the same?',
    'Count the squares with a grown-up. Make each jump the same.',
  ],
  L5: [
    'Look at your numbers from left to right.',
    'Is this how numbers sit on a ruler?',
    'Lay a ruler by your line. Read both with a grown-up.',
  ],
  L6: [
    'Look down from this mark.',
    'Slide down from your mark. Which tick do you meet?',
    'With a grown-up, read your list. Slide the mark to its tick.',
  ],
  L7: [
    'Look at how your marks pile up.',
    'Do all marks take the same space?',
    'With a grown-up, give each mark its own square.',
  ],
  L8: [
    'Count all your marks.',
    'Does your list have just as many?',
    'Read your list with a grown-up. Cross off each size you mark.',
  ],
  L9: [
    'Look at what goes up from your line.',
    'Which way do you read how long? Which way do you count?',
    'Read each size to a grown-up. Put its mark on the line.',
  ],
  L10: [
    'Look at the lines you drew.',
    'Does a line here say what came in between?',
    'Tell a grown-up what one mark says. Do marks need a line?',
  ],
  L11: [
    'Look at the words by your line.',
    'The numbers are how many of what?',
    'Find your ruler with a grown-up. What does it count in?',
  ],
  L12: [
    'Look at this mark.',
    'Did we measure that day?',
    'Find that day in your list with a grown-up. What does it say?',
  ],
  L13: [
    'Look at the parts on your line.',
    'Is a whole and a half more than a whole?',
    'Lay a ruler by your line. Find the half with a grown-up.',
  ],
  L14: [
    'Look at the parts from one whole to the next.',
    'How many same parts make a whole?',
    'Fold a strip with a grown-up. Fold it once more. Name each part.',
  ],
  L15: [
    'Look at your marks and your key.',
    'How can we tell whose mark this is?',
    'With a grown-up, pick a mark for each one. Put it in the key.',
  ],
};
