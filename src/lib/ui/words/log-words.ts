import { formatDay, type CivilDay } from '#core/calendar';
import type { Ending, Investigation, Quantity, Taken } from '#core/journal';
import { formatMeasured } from '#core/measure';
import type { BlankRow, BlanksRow, LogRow } from '#core/series';
import { stateWords } from './day-words';

/** What stands on the log page. Child sentences: ten words or fewer, and never "wrong". */
export const logWords = {
  empty: 'Nothing is here yet.',
  teachFix: 'One line through it. The old one stays.',
  why: 'Why did it change?',
  whyTakeBack: 'Why do we cross it out?',
  whyOptional: 'You may leave the why out.',
  theNote: 'the note',
  sameAsBefore: 'That is what the log says now.',
  noDay: 'Which day was it? Choose a day.',
  bothUnitsHint: 'About the same length, in the other unit.',
  takenBack: 'It has a line through it now.',
  notOurs: 'This was not ours',
  anotherDay: 'It was not that day',
  emptyNote: 'Write some words first.',
  putBack: 'It counts again.',
  middleCounts: 'the middle one counts',
} as const;

/** What is asked where a small number beside a reading cannot be. */
export const extraWords = {
  leaves: 'How many leaves? Write a whole number.',
  span: 'Write a whole number of days, 1 to 60.',
} as const;

/** Reasons to tap. They are what a child would say, and the child may say something else. */
export const whySuggestions = {
  fix: ['I looked again', 'I read the other end', 'I read the other side', 'My finger slipped'],
  move: ['It was not that day', 'I looked again', 'My finger slipped'],
  takeBack: ['It was not ours', 'We wrote it twice', 'It was just a try'],
  change: ['I looked again', 'My finger slipped'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

/** What is said when a line was written, for a day. */
export const writtenWords = (what: string, day: string): string =>
  `It is written down: ${what}, ${day}.`;

/** The heading over each piece of work. */
export const workWords = {
  write: 'Write for this day',
  fix: 'Fix this',
  'change-mark': 'Change this day',
  'change-word': 'Change this word',
  note: 'Write a note',
  doubt: 'Look at this number',
} as const;

/** The head of a month's page: `March 2026`. */
export const monthTitle = (month: string): string =>
  formatDay(`${month}-01` as CivilDay, 'long')
    .split(' ')
    .slice(2)
    .join(' ');

/** On the tab of a closed month: `Mar 2026`. */
export const monthTab = (month: string): string => monthTitle(month).replace(/^(\w{3})\w*/, '$1');

/** How far a number is from the one before, where days lie between. */
export const gapWords = (gapDays: number): string => `${daysWords(gapDays)} since the last one`;

/** A number of days, in words that go in a sentence. */
export const daysWords = (days: number): string => (days === 1 ? '1 day' : `${days} days`);

/** What a reading said before it was fixed: its number, and what else the fixing changed. */
export const wasWords = (was: Taken, now: Taken): string =>
  [
    formatMeasured(was.counted),
    ...(was.spanDays === now.spanDays ? [] : [`for ${daysWords(was.spanDays)}`]),
    ...(was.day === now.day ? [] : [`on ${formatDay(was.day, 'short')}`]),
    ...(was.time === now.time || !was.time ? [] : [`at ${was.time}`]),
  ].join(' ');

/** What stands on a day without a line that counts. */
export function blankWords(row: BlankRow, quantity: Quantity): string {
  if (!row.alone) return quantity === 'daily-kind' ? 'no word' : 'no number';
  return row.planned ? 'nothing written' : 'a day off';
}

/** What stands for a folded stretch. */
export const stretchWords = (row: BlanksRow): string =>
  `${daysWords(row.dayCount)} with nothing written`;

/** From its first day to its last. */
export const stretchDays = (row: BlanksRow): string => {
  const form = row.day.slice(0, 4) === row.lastDay.slice(0, 4) ? 'short' : 'long';
  return `${formatDay(row.day, form)} to ${formatDay(row.lastDay, form)}`;
};

/** What a row says, in short: for the name of its button. */
export function rowWords(row: LogRow): string {
  const day = formatDay(row.day, 'short');
  switch (row.kind) {
    case 'reading':
      return `${formatMeasured(row.line.counted)}, ${day}`;
    case 'mark':
      return `${stateWords[row.line.state].inLog}, ${day}`;
    case 'word':
      return `${row.line.word}, ${day}`;
    case 'note':
      return `note, ${day}`;
    default:
      return day;
  }
}

/** The columns of the log, but for the one with the buttons. */
export const columnWords = (quantity: Quantity): readonly string[] => [
  'Day',
  quantity === 'daily-kind' ? 'Word' : 'Reading',
  'What else',
  'Who',
];

/** The protocol card: how this investigation is measured. */
export const protocolWords: readonly {
  readonly field: keyof Pick<Investigation, 'where' | 'tool' | 'when'>;
  readonly name: string;
}[] = [
  { field: 'where', name: 'Where' },
  { field: 'tool', name: 'With' },
  { field: 'when', name: 'When' },
];

/** How a log came to its end, before the day. */
export const endedWords: Readonly<Record<Ending, string>> = {
  lost: 'It was lost on',
  finished: 'It was finished on',
};
