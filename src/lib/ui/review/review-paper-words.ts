import type { ReviewKind } from '#core/lessons';

/** What the child reads on the printed page. */
export const paperChildWords = {
  name: 'A few things to try',
  task: 'Write on the lines.',
  measure: 'My measure of the day:',
  choice: 'Make up one of your own.',
} as const;

/** What a grown-up reads beside the page, and on the sheet of answers. */
export const paperWords = {
  about:
    'One page for today and one of answers for you. They are the same things as on the screen.',
  print: 'Print it',
  size: 'Print at actual size (100%).',
  show: 'Show the answers here',
  hide: 'Put the answers away',
  back: 'On the screen',
  answers: 'Answers',
  answersTask: 'Ask how it was found before you say whether it is so.',
  columns: ['Thing', 'Answer', 'If it does not come: one helping question'],
  listen: 'Any story that fits the log. Listen, and ask how one could check it.',
  afterwards:
    'What is answered on paper is not kept by the notebook. Answer on the screen what should come again: a missed one comes on the next school day, a right one after 2, then 5, then 10 school days.',
  places: {
    'measure-today': 'measure of the day',
    ruler: 'ruler',
    sum: 'add or take away',
    'graph-read': 'graph',
    'from-before': 'from before',
    choice: 'own choice',
  } satisfies Record<ReviewKind, string>,
} as const;
