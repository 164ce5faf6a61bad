import type { LengthUnit } from '#core/measure';

/** What a child reads while both sides of the ruler are read: one thing to do at a time. */
export const bothSidesWords = {
  name: 'Two sides',
  back: 'Measure with care',
  who: 'Who reads the ruler?',
  next: 'Next',
  writeBoth: 'Write both down',
  writeOther: 'Write it down',
  writeOne: 'Write just the first one',
  safe: 'Your first number is safe.',
  notYet: 'This log is not for a ruler. Pick a plant.',
  done: 'This log is done. You can look at it.',
  waiting: 'You read it today. The number is covered.',
  cover: 'Cover the number. Read the other side.',
  readOther: 'Read the other side',
  readNew: 'Read both sides new',
  sameHeight: 'Same height.',
  sameLength: 'Same length.',
  twoNumbers: 'Two numbers.',
  bothTrue: 'Both are true.',
  again: 'Let us read both sides again.',
  yesAgain: 'Read both sides again',
  keep: 'Keep both numbers',
  kept: 'Both numbers are in the log.',
  look: 'See them on two rulers',
  log: 'Look at the log',
  otherLetters: 'Look at the letters on the ruler.',
} as const;

/** Which side is read first, and which then: the letters stand on the ruler. */
export const sideTask = (unit: LengthUnit, turn: 'first' | 'then' | 'only'): string => {
  if (turn === 'first') return `Read the side with “${unit}”.`;
  return turn === 'then' ? `Now the side with “${unit}”.` : `Now read the side with “${unit}”.`;
};
