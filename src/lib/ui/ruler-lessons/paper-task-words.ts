import type { RulerSlip } from '#core/lessons';

/** For the child, on the sheet. */
export const paperTaskWords = {
  name: 'Read a ruler',
  task: 'How long is each strip?',
  long: 'The strip is',
  between: 'It ends between',
  and: 'and',
  nearest: 'The strip is nearest to',
} as const;

/** For the grown-up who prints, and who looks at the answers. */
export const paperAnswerWords = {
  name: 'Read a ruler: answers',
  task: 'Keep it for later. Ask the question; do not tell the number.',
  about:
    'Six tasks at true size: three strips that do not begin at zero, and three that end between two numbers. The answers come on a page of their own.',
  print: 'Print both pages',
  actualSize: 'In the print window, choose 100\u00a0% or “actual size”.',
  show: 'Show the answers here',
  other: 'Other tasks',
  columns: ['Task', 'Answer', 'Another number, and what to ask'],
} as const;

/** What a number shows, for the grown-up. */
export const slipNames: Readonly<Record<RulerSlip, string>> = {
  'read-the-end': 'read at the end of the strip',
  'counted-marks': 'counted marks, not spaces',
  'counted-small-marks': 'counted small marks, not spaces',
  'small-for-whole': 'counted small parts as whole units',
  'left-part-off': 'left the part off',
  'next-whole': 'took the next whole number',
  'counted-back': 'counted the parts back',
  'farther-whole': 'took the number further away',
};
