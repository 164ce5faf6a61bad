import type { EvidenceLevel } from '#core/journal';

/** The form of a note. */
export const noteWords = {
  title: 'A note of what was seen',
  again: 'The note, written anew',
  skill: 'Which skill',
  choose: 'Choose one',
  how: 'How was it done?',
  day: 'On which day',
  dayHint: 'Today, or earlier.',
  attach: 'Attach',
  nothing: 'Nothing',
  drawings: 'Drawings',
  answers: 'Answers and questions',
  attachHint: 'A drawing that is attached is a kept sample.',
  words: 'In words',
  ifYouLike: '(if you like)',
  wordsHint: 'What was done and said, and what helped.',
  save: 'Write it down',
  leave: 'Leave it',
  skillFirst: 'Choose a skill first.',
  dayFirst: 'Choose a day first: today, or earlier.',
  anew: 'Write it anew',
  takeBack: 'Take it back',
} as const;

/** The least first: the list begins there. */
export const howChoices: Readonly<Record<EvidenceLevel, string>> = {
  seen: 'I saw it (done together, or not sure)',
  'with-help': 'With help',
  alone: 'Alone',
};
