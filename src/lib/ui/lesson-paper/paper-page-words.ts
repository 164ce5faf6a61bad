import type { FrameLevel } from './lesson-frame';
import type { SheetGroup } from './lesson-paper-request';

/** The page where a lesson is printed, for the grown-up. */
export const pageWords = {
  name: 'The lesson on paper',
  print: 'Print these sheets',
  how: 'In the print window, choose 100 % or “actual size”.',
  which: 'Which sheets',
  paper: 'Paper',
  frame: 'What stands on the child’s graph paper',
  plan: 'The plan',
  notLoaded: 'Some sheets could not be fetched. Open this page again when the network is back.',
} as const;

export const groupNames: Readonly<Record<SheetGroup, string>> = {
  child: 'The child’s',
  'grown-up': 'Yours, with answers',
  words: 'Word cards',
};

export const frameNames: Readonly<Record<FrameLevel, string>> = {
  'half-drawn': 'Half of it drawn',
  'frame-given': 'Names and numbers',
  'scale-given': 'Numbers',
  'empty-paper': 'Only squares',
};
