import type { AskedQuestion, Told } from '#core/questions';
import type { CivilDay, ClockTime } from '#core/calendar';
import { sizeOfUnit } from './journal-writer';
import type { RawMeasure } from './raw-log';

/** What the raw entries say about a question: what is amiss, and what a child must reckon. */
export interface Reckoned {
  readonly wrong: readonly string[];
  readonly sums: readonly Sum[];
}

/** Numbers in units, as they are said: to be read, or reckoned with. */
export interface Sum {
  readonly kind: 'read' | 'less' | 'more' | 'share' | 'times';
  readonly numbers: readonly number[];
}

export const read = (...numbers: number[]): Sum => ({ kind: 'read', numbers });
export const less = (larger: number, smaller: number): Sum => ({
  kind: 'less',
  numbers: [larger, smaller],
});
export const more = (...numbers: number[]): Sum => ({ kind: 'more', numbers });

/** Gathers what is amiss; nothing where all holds. */
export const findings = (
  sums: readonly Sum[],
  ...checks: readonly (readonly [holds: boolean, otherwise: string])[]
): Reckoned => ({ wrong: checks.filter(([holds]) => !holds).map(([, text]) => text), sums });

export const inUnitsOf = ({ exact, unit }: Pick<RawMeasure, 'exact' | 'unit'>): number =>
  exact / sizeOfUnit[unit as keyof typeof sizeOfUnit];

/** What a blank holds; a question without it is our own mistake. */
const blank = ({ template, blanks }: AskedQuestion, name: string): Told => {
  const told = blanks[name];
  if (!told) throw new Error(`${template} has no ${name}`);
  return told;
};

export const wordIn = (question: AskedQuestion, name: string): string => {
  const told = blank(question, name);
  if (told.kind !== 'word') throw new Error(`${name} is no word`);
  return told.word;
};

export const dayIn = (question: AskedQuestion, name: string): CivilDay => {
  const told = blank(question, name);
  if (told.kind !== 'day') throw new Error(`${name} is no day`);
  return told.day;
};

export const timeIn = (question: AskedQuestion, name: string): ClockTime => {
  const told = blank(question, name);
  if (told.kind !== 'time') throw new Error(`${name} is no time`);
  return told.time;
};

export type Length = Extract<Told, { kind: 'length' }>;

export const lengthIn = (question: AskedQuestion, name: string): Length => {
  const told = blank(question, name);
  if (told.kind !== 'length') throw new Error(`${name} is no length`);
  return told;
};

export const countIn = (question: AskedQuestion, name: string): number => {
  const told = blank(question, name);
  if (told.kind !== 'count') throw new Error(`${name} is no count`);
  return told.count;
};

/** One text for one answer, for comparing what is expected with what is answered. */
export const said = (told: Told): string => {
  if (told.kind === 'length') return `${told.exact} of ${told.unit}`;
  if (told.kind === 'count') return `${told.count} things`;
  if (told.kind === 'days') return [...told.days].sort().join(' and ');
  if (told.kind === 'order') return told.things.map(said).join(' < ');
  if (told.kind === 'between') return `${said(told.low)} to ${said(told.high)}`;
  if (told.kind === 'interval') return `${told.from} to ${told.to}, ${told.gapDays} days`;
  if (told.kind === 'idea') return `idea ${told.idea}`;
  return told.kind === 'day' ? told.day : told.kind === 'time' ? told.time : told.word;
};

export const lengthSaid = (exact: number, unit: string): string => `${exact} of ${unit}`;

/** The answer is this one, and no other. */
export const isAnswer = (
  { answer }: AskedQuestion,
  expected: string,
): readonly [boolean, string] => [
  said(answer) === expected,
  `answered ${said(answer)}, but the entries say ${expected}`,
];
