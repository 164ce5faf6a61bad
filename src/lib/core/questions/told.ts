import type { CivilDay, ClockTime } from '#core/calendar';
import { exactPerUnit, type MarkId, type Unit } from '#core/measure';
import type { Told } from './question';

/** Short ways to tell a thing. None of this file but `sameTold` is part of the public door. */
export const aDay = (day: CivilDay): Told => ({ kind: 'day', day });
export const aTime = (time: ClockTime): Told => ({ kind: 'time', time });
export const aWord = (word: string): Told => ({ kind: 'word', word });
export const anIdea = (idea: string): Told => ({ kind: 'idea', idea });
export const aCount = (count: number, of: string): Told => ({ kind: 'count', count, of });
export const aLength = (
  exact: number,
  { unit, mark }: { readonly unit: Unit; readonly mark: MarkId },
): Told => ({ kind: 'length', exact, unit, mark });

/**
 * Whether two told things are the same answer. Lengths are the same when they are equally long, in
 * whatever unit; counts when they are as many, whatever they count; days of a list in any order;
 * things in an order only in that order.
 * @example
 * sameTold({ kind: 'length', exact: 20000000, unit: 'cm', mark: '1 cm' }, { kind: 'length', exact: 20000000, unit: 'mm', mark: '1 mm' }) // => true
 * sameTold({ kind: 'count', count: 2, of: 'days' }, { kind: 'length', exact: 20000000, unit: 'cm', mark: '1 cm' }) // => false
 */
export const sameTold = (one: Told, other: Told): boolean => areSame(partsOf(one), partsOf(other));

const areSame = (one: unknown, other: unknown): boolean => {
  if (!Array.isArray(one) || !Array.isArray(other)) return one === other;
  return one.length === other.length && one.every((part, index) => areSame(part, other[index]));
};

const partsOf = (told: Told): readonly unknown[] => {
  switch (told.kind) {
    case 'length':
      return told.unit === 'count' ? ['count', told.exact] : ['length', told.exact];
    case 'count':
      return ['count', told.count];
    case 'day':
      return ['day', told.day];
    case 'days':
      return ['days', ...new Set(told.days.toSorted())];
    case 'time':
      return ['time', told.time];
    case 'word':
      return ['word', told.word];
    case 'idea':
      return ['idea', told.idea];
    case 'order':
      return ['order', ...told.things.map(partsOf)];
    case 'between':
      return ['between', partsOf(told.low), partsOf(told.high)];
    case 'interval':
      return ['interval', told.from, told.to, told.gapDays];
  }
};

/** The number a told thing is said with, where it is said with one. */
export const numberSaid = (told: Told): number | null => {
  if (told.kind === 'count') return told.count;
  return told.kind === 'length' ? told.exact / exactPerUnit(told.unit) : null;
};

/** Every number that is written when a thing is told: of a day, a time, and in a name too. */
export const numbersWritten = (told: Told): readonly number[] => {
  switch (told.kind) {
    case 'length':
    case 'count':
      return [numberSaid(told) as number, ...(told.kind === 'count' ? inText(told.of) : [])];
    case 'day':
      return [dayOfMonth(told.day)];
    case 'days':
      return told.days.map(dayOfMonth);
    case 'time':
      return inClock(told.time);
    case 'word':
      return inText(told.word);
    case 'order':
      return told.things.flatMap(numbersWritten);
    case 'between':
      return [...numbersWritten(told.low), ...numbersWritten(told.high)];
    case 'interval':
      return [dayOfMonth(told.from), dayOfMonth(told.to), told.gapDays];
    case 'idea':
      return [];
  }
};

const dayOfMonth = (day: CivilDay): number => Number(day.slice(8, 10));

const inText = (text: string): readonly number[] =>
  (text.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);

/** As the 24-hour clock and the clock face say it. */
const inClock = (time: ClockTime): readonly number[] => {
  const [hour, minute] = time.split(':').map(Number) as [number, number];
  return [hour, minute, hour % 12 === 0 ? 12 : hour % 12];
};
