import { formatDay, type CivilDay } from '#core/calendar';
import { formatExactNumber } from '#core/measure';
import type { Told } from '#core/questions';
import { ideaText } from './idea-words';

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
      return told.time;
    case 'word':
      return told.word;
    case 'order':
      return told.things.map(answerText).join(', ');
    case 'between':
      return `${answerText(told.low)} and a bit, less than ${answerText(told.high)}`;
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

const lengthText = ({ exact, unit, mark }: Extract<Told, { kind: 'length' }>): string => {
  const number = formatExactNumber(exact, unit, mark);
  if (unit === 'count') return number;
  if (unit !== 'in') return `${number} ${unit}`;
  return `${number} ${number === '1' || /^\d+\/\d+$/.test(number) ? 'inch' : 'inches'}`;
};

const countText = ({ count, of }: { readonly count: number; readonly of: string }): string => {
  if (of === '') return String(count);
  return `${count} ${count === 1 ? (oneWords[of] ?? of) : of}`;
};

const oneWords: Readonly<Record<string, string>> = {
  ...{ days: 'day', readings: 'reading', times: 'time', steps: 'step', crosses: 'cross' },
};
