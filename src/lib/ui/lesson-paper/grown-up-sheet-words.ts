import type { Level } from '#core/questions';

/** What stands on the grown-up's sheets besides the plan’s own words. */
export const grownUpWords = {
  preview: 'The grown-up’s sheets',
  forYou: 'For the grown-up',
  secondSitting: 'Second sitting, another day',
  practice: 'Practice numbers, not ours',
  exampleTask: 'Draw this one yourself, aloud. It is not at true scale.',
  cautions: 'With care',
  questions: 'Questions, answers and likely slips',
  answer: 'Answer',
  slip: 'Instead of it',
  easier: 'Easier',
  further: 'Further',
  spare: 'More questions, for a child who wants them',
  withdrawn: 'Taken out: a number of the log was put right, and the answer is not the same now.',
  finished: 'The finished graph',
  finishedTask: 'One right way to draw it, smaller than true scale.',
} as const;

export const levelNames: Readonly<Record<Level, string>> = {
  read: 'Read the data',
  between: 'Between the data',
  beyond: 'Beyond the data',
  behind: 'Behind the data',
};

export const minutesText = (minutes: number): string =>
  minutes === 1 ? '1 minute' : `${minutes} minutes`;
