import { furtherIdeas } from './further-ideas';

/** Answers in words, each by its key, as a child might say them. */
export const readIdeas: Readonly<Record<string, string>> = {
  'cross-is-one-thing': 'One thing that we measured once.',
  'cross-is-one-read': 'One time that we measured it.',
  'cross-is-one-growth': 'How much it grew, from one day to the next.',
  'cross-is-one-day-of-rain': 'The rain of one day.',
  'cross-is-a-unit': 'One inch or one cm.',
  'cross-is-a-day-name': 'The name of a day.',
  'dry-is-read-blank-is-not': 'The dry day had no rain. The other day we do not know.',
  'both-mean-no-rain': 'There was no rain on both.',
};

/** An answer in words; our own mistake throws for a key that no catalogue has. */
export const ideaText = (idea: string): string => {
  const text = readIdeas[idea] ?? furtherIdeas[idea];
  if (text === undefined) throw new Error(`There are no words for the idea ${idea}`);
  return text;
};
