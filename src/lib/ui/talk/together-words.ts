import type { EvidenceLevel } from '#core/journal';

/** What stands on the Talk page for the grown-up. */
export const grownUpWords = {
  heading: 'For the grown-up',
  listen: 'What the log says, or what a good answer holds:',
  heardAs: 'How did it go?',
  noAnswer: 'Nobody wrote an answer down. You decide together.',
  lead: 'Put a finger on the graph together, say the way aloud, and let the child say the end.',
  easier: 'Easier:',
  further: 'Further:',
  slip: 'The last answer:',
  note: 'It is kept as something you saw on this day. It is no mark.',
} as const;

export const howWords: Readonly<Record<EvidenceLevel, string>> = {
  alone: 'Alone',
  'with-help': 'With some help',
  seen: 'We looked together',
};
