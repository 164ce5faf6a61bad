import type { LessonBlock } from '#core/lessons';

/** The heading of a part of a plan. */
export const blockHeading = (block: LessonBlock): string => headings[block];

const headings: Readonly<Record<LessonBlock, string>> = {
  opener: 'Begin with your hands',
  'look-and-wonder': 'Look and wonder',
  teach: 'Teach one thing',
  draw: 'Your child draws',
  talk: 'Talk about the graph',
  sentence: 'One sentence',
  materials: 'Lay ready',
  words: 'Words of the day',
  accept: 'What to accept',
  'if-stuck': 'If your child is stuck',
  'stop-when': 'When to stop',
  'watch-for': 'Mistakes to watch for',
};
