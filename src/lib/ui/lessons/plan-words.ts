import type { Level } from '#core/questions';

/** The plan of one lesson, for the grown-up. */
export const planWords = {
  run: 'Teach it, step by step',
  print: 'Print it',
  talk: 'Talk page for the child',
  all: 'All lessons',
  rename: 'Change the name',
  title: 'Name of the lesson',
  keepTitle: 'Keep this name',
  planTitle: 'The plan’s own name again',
  beforeHeading: 'Before you begin',
  partsHeading: 'The lesson, part by part',
  besideHeading: 'Beside you',
  nextSitting: 'Second sitting. Another day is good.',
  example: 'Worked example',
  practice: 'Practice numbers, not ours',
  uncoverTitle: 'Uncover the title',
  coverTitle: 'Cover the title',
  practiceTable: 'The practice table',
  madeUp: 'Practice numbers, not ours',
} as const;

/** How a part is changed before printing. */
export const blockWords = {
  change: 'Change',
  yours: 'Your words',
  label: (heading: string) => `Your words for “${heading}”`,
  hint: 'One line for each thing.',
  keep: 'Keep these words',
  back: 'The plan’s words again',
  leaveOut: 'Leave it out',
  leftOut: 'Left out of this lesson.',
  putBack: 'Put it back',
  never: 'Change nothing',
} as const;

export const minutesText = (minutes: number): string =>
  minutes === 1 ? 'About 1 minute' : `About ${minutes} minutes`;

export const levelNames: Readonly<Record<Level, { name: string; says: string }>> = {
  read: { name: 'Read', says: 'The answer stands in the graph.' },
  between: { name: 'Between', says: 'Compare or put together.' },
  beyond: { name: 'Beyond', says: 'What is likely, with a reason. You judge it.' },
  behind: { name: 'Behind', says: 'Where the numbers came from.' },
};

export const questionsWords = {
  heading: 'Questions',
  answers: 'Answer, slips, easier, further',
  answer: 'Answer',
  slips: 'A likely slip, and what it shows',
  easier: 'Easier',
  further: 'Further',
  swap: 'Another in its place',
  swapHeading: 'What could stand here',
  noSwap: 'The log has no other question of this kind.',
  take: 'Take this one',
  more: 'Show more',
  leaveOut: 'Leave it out',
  yours: 'Your question',
  set: 'Another set of questions',
  hasSet: 'Other questions were chosen.',
  noSet: 'The log has no other set of questions.',
  noneOfLevel: 'The log gives no question of this kind yet.',
  noneAtAll: 'No question is in this lesson. Choose another set, or add your own.',
  spare: 'More questions, if the child wants them',
  add: 'Add a question of your own',
  level: 'What kind of question?',
  text: 'Your question',
  textMissing: 'Write the question first.',
  ownAnswer: 'Its answer, or what you would accept',
  keepOwn: 'Add it',
  open: 'Open all answers',
  close: 'Close all answers',
} as const;

export const withdrawnWords = {
  one: 'One question was taken out: a number of the log was put right, and its answer is not the same now.',
  many: (count: number) =>
    `${count} questions were taken out: numbers of the log were put right, and their answers are not the same now.`,
  printed: 'If the sheets are printed already, cross it out there too.',
  forget: 'Leave it out for good',
} as const;

/** The right graph of the child's own table, for the grown-up's eyes. */
export const finishedWords = {
  heading: 'The finished graph, for you',
  open: 'A child’s drawing of this log is still open, so the finished graph is covered here.',
  why: 'The child draws it first. Look when the child does not.',
  show: 'Show it to me',
  hide: 'Hide it again',
} as const;
