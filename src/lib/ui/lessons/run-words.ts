import type { EvidenceLevel } from '#core/journal';

/** A lesson step by step, on the grown-up's device. */
export const runWords = {
  place: (number: number, count: number) => `Step ${number} of ${count}`,
  next: 'Next',
  back: 'Back',
  stop: 'Stop for now',
  stopWhy: 'The place is kept on this device.',
  fromStart: 'From the beginning',
  going: 'You were here last time.',
  board: 'Open the drawing board',
  questionOf: (number: number, count: number) => `Question ${number} of ${count}`,
  noAnswer: 'No answer was written for this one. You judge it.',
  end: 'The end',
  given: 'Write that it was given today',
  isGiven: 'It is written: given today.',
  toPlan: 'To the plan',
  toLessons: 'All lessons',
} as const;

/** What a grown-up may note about an answer. It is evidence to look back at, never a score. */
export const noteWords = {
  ask: 'How did it go? Note it only if you like.',
  who: 'Who answered?',
  noted: 'Noted.',
  forget: 'Take the note back',
  levels: {
    alone: 'Alone',
    'with-help': 'With help',
    seen: 'Not yet: we looked together',
  } satisfies Record<EvidenceLevel, string>,
} as const;
