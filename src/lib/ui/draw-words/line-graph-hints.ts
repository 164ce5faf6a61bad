import type { MistakeId } from '#core/graphs';
import type { HintLadder } from './hint-ladder';

/** Hints for line graphs. A mistake is also told for its nearest kin, so the words fit both. */
export const lineGraphHints: Readonly<Record<Extract<MistakeId, `T${number}`>, HintLadder>> = {
  T1: [
    'Look at the days along the bottom.',
    'Did each day come and go? Leave each one a space.',
    'Say the days out loud with a grown-up. Point to each one.',
  ],
  T2: [
    'Look at this point.',
    'Did we measure that day? Can we know?',
    'Find that day in the log with a grown-up. What does it say?',
  ],
  T3: [
    'Look at the way your line goes.',
    'Follow the days with your finger.',
    'Say the days with a grown-up. Join the points day by day.',
  ],
  T4: [
    'Look at how you got to your points.',
    'Walk along to the day first. Then climb.',
    'Pick a day with a grown-up. Walk to it. Then climb.',
  ],
  T5: [
    'Look at the numbers up the side.',
    'Do these numbers go up by the same jump?',
    'Start at the floor with a grown-up. Count up by one jump.',
  ],
  T6: [
    'Look at the numbers up the side.',
    'Is each jump the same, from the floor up?',
    'Count the squares with a grown-up. Make each jump the same.',
  ],
  T7: [
    'Look at the top of the side.',
    'Where will your top day fit?',
    'Find your top day with a grown-up. Count up till it fits.',
  ],
  T8: [
    'Look at your points.',
    'Lay a ruler flat from point to side. What does it say?',
    'Read the log with a grown-up. Touch the point for each day.',
  ],
  T9: [
    'Look at your first point.',
    'What do we know about that day?',
    'Find that day in the log with a grown-up. Did we measure?',
  ],
  T10: [
    'Look at this part of your line.',
    'Did we measure it, or guess? Use dots for a guess.',
    'Find the days with a grown-up. Where did we not measure?',
  ],
  T11: [
    'Look at what you drew.',
    'What does one point tell us?',
    'Pick a day with a grown-up. Put a point for how tall.',
  ],
  T12: [
    'Look at your lines and your key.',
    'Which line is whose?',
    'Name each line with a grown-up. Write it in the key.',
  ],
  T13: [
    'Look at your line and your points.',
    'Does your line go to each point?',
    'With a grown-up, use a ruler. Go from point to point.',
  ],
  T14: [
    'Look at what you measure in.',
    'Is it the same all the way?',
    'Read the log with a grown-up. Which ruler did we use?',
  ],
};
