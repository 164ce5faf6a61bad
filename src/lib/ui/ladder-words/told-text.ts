import { formatDay, type CivilDay } from '#core/calendar';
import { formatExactNumber, type Unit } from '#core/measure';
import type { Told } from '#core/questions';
import { ideaText } from './idea-words';
import { timeText } from './time-text';

/** A blank or an answer as a child reads it. */
export const answerText = (told: Told): string => {
  switch (told.kind) {
    case 'length':
      return lengthText(told);
    case 'count':
      return countText(told);
    case 'day':
      return dayText(told.day);
    case 'days':
      return listText(told.days.map(dayText));
    case 'time':
      return timeText(told.time);
    case 'word':
      return told.word;
    case 'order':
      return told.things.map(answerText).join(', ');
    case 'between':
      return betweenText(told);
    case 'interval':
      return `${dayText(told.from)} to ${dayText(told.to)}, ${countText({ count: told.gapDays, of: 'days' })}`;
    case 'idea':
      return ideaText(told.idea);
  }
};

/** Without the year: all the days of a graph lie near one another. */
export const dayText = (day: CivilDay): string => formatDay(day, 'long').replace(/ \d{4}$/, '');

/** `a, b and c`. */
export const listText = (texts: readonly string[]): string =>
  texts.length < 2 ? texts.join('') : `${texts.slice(0, -1).join(', ')} and ${texts.at(-1)}`;

/** How many days of a kind are called: sunny days, days that were wet, readings of one plant. */
export const kindText = (label: string, counted: string): string => {
  if (counted !== 'days') return `${counted} of ${label}`;
  return dayWords[label] ?? `“${label}” days`;
};

const dayWords: Readonly<Record<string, string>> = {
  ...{ sun: 'sunny days', cloud: 'cloudy days', rain: 'rainy days', snow: 'snowy days' },
  ...{ wind: 'windy days', fog: 'foggy days', wet: 'wet days', dry: 'dry days' },
  ...{ grew: 'days when it grew', 'did not grow': 'days when it did not grow' },
  ...{ 'got shorter': 'days when it got less', measured: 'days with a number' },
  ...{ missed: 'days we missed', 'not up yet': 'days it was not up yet' },
  ...{ 'no sun': 'days with no sun', 'a trace': 'days with a trace', lost: 'days it was lost' },
  ...{ 'nothing written': 'days with no mark', other: 'other days', 'all others': 'other days' },
};

/** Both ends are in it; a span of days is only about so. */
const betweenText = ({ low, high, hasLeftOver }: Extract<Told, { kind: 'between' }>): string => {
  if (hasLeftOver) return `${answerText(low)} and a bit more`;
  const join = low.kind === 'day' ? (['about', 'to'] as const) : (['between', 'and'] as const);
  return `${join[0]} ${answerText(low)} ${join[1]} ${answerText(high)}`;
};

const lengthText = ({ exact, unit, mark }: Extract<Told, { kind: 'length' }>): string => {
  const number = formatExactNumber(exact, unit, mark);
  const names = unitNames[unit];
  // "1 ft 3 in" has its units already.
  if (unit === 'count' || /[a-z]/.test(number)) return number;
  if (!names) return `${number} ${unit}`;
  return `${number} ${number === '1' || /^\d+\/\d+$/.test(number) ? names[0] : names[1]}`;
};

const unitNames: Readonly<Partial<Record<Unit, readonly [one: string, more: string]>>> = {
  ...{ in: ['inch', 'inches'], ft: ['foot', 'feet'], yd: ['yard', 'yards'] },
};

const countText = ({ count, of }: { readonly count: number; readonly of: string }): string => {
  if (of === '') return String(count);
  return `${count} ${count === 1 ? (oneWords[of] ?? of) : of}`;
};

const oneWords: Readonly<Record<string, string>> = {
  ...{ days: 'day', readings: 'reading', times: 'time', steps: 'step', crosses: 'cross' },
};
