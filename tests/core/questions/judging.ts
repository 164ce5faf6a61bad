import { civilDay, parseClockTime } from '#core/calendar';
import { exactPerUnit, type MarkId, type Unit } from '#core/measure';
import {
  judgeAnswer,
  type AskedQuestion,
  type Level,
  type Slip,
  type SlipId,
  type Told,
} from '#core/questions';

/** What is right and kind to say is common practice, no source; the numbers are made up. */
export const long = (number: number, unit: Unit = 'cm', mark: MarkId = '1 cm'): Told => ({
  ...{ kind: 'length', exact: Math.round(number * exactPerUnit(unit)), unit, mark },
});
export const many = (count: number, of = ''): Told => ({ kind: 'count', count, of });
export const march = (date: number) => civilDay(`2026-03-${`${date}`.padStart(2, '0')}`);
export const day = (date: number): Told => ({ kind: 'day', day: march(date) });
export const days = (...dates: readonly number[]): Told => ({
  kind: 'days',
  days: dates.map(march),
});
export const order = (...things: readonly Told[]): Told => ({ kind: 'order', things });
export const stretch = (from: number, to: number, gapDays: number): Told => ({
  ...{ kind: 'interval', from: march(from), to: march(to), gapDays },
});
export const between = (low: Told, high: Told): Told => ({ kind: 'between', low, high });
export const idea = (key: string): Told => ({ kind: 'idea', idea: key });
export const word = (text: string): Told => ({ kind: 'word', word: text });
export const time = (text: string): Told => {
  const read = parseClockTime(text);
  if (!read.ok) throw new Error(text);
  return { kind: 'time', time: read.value };
};
export const slip = (shows: SlipId, told: Told = idea(shows)): Slip => ({ told, shows });

export type Question = Pick<AskedQuestion, 'level' | 'answer' | 'slips' | 'blanks'>;
export const asked = (
  level: Level,
  answer: Told,
  slips: readonly Slip[] = [],
  blanks: AskedQuestion['blanks'] = {},
): Question => ({ level, answer, slips, blanks });
export const said = (question: Question, given: Told): string => {
  const judged = judgeAnswer(question, given);
  return judged.kind === 'slip' ? judged.slip : judged.kind;
};
