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
      return planWords[told.word] ?? told.word;
    case 'order':
      return told.things.some(({ kind }) => kind === 'idea')
        ? ideasText(told.things)
        : told.things.map(answerText).join(', ');
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

/** Words that a plan is written in, where they are not said just so. */
const planWords: Readonly<Record<string, string>> = {
  ...{ 'something-else': 'something else', depth: 'how deep the seed is' },
};

/** Both ends are in it; a span of days is only about so. */
const betweenText = ({ low, high, hasLeftOver }: Extract<Told, { kind: 'between' }>): string => {
  if (hasLeftOver) return `${answerText(low)} and a bit more`;
  const join = low.kind === 'day' ? (['about', 'to'] as const) : (['between', 'and'] as const);
  return `${join[0]} ${answerText(low)} ${join[1]} ${answerText(high)}`;
};

/**
 * Ideas, each with what stands after it: as a list where the idea ends in a colon, else as
 * sentences of their own, as the family wrote them.
 */
const ideasText = (things: readonly Told[]): string => {
  const starts = things.flatMap(({ kind }, index) => (kind === 'idea' ? [index] : []));
  return starts
    .map((start, index) => {
      const idea = answerText(things[start] as Told);
      const after = things.slice(start + 1, starts[index + 1]).map(wordsIn);
      if (after.length === 0) return idea;
      return idea.endsWith(':')
        ? `${idea} ${listText(after.map((words) => words.replace(/[.!?]$/, '')))}.`
        : [idea, ...after.map(sentence)].join(' ');
    })
    .join(' ');
};

const wordsIn = (told: Told): string =>
  told.kind === 'days' ? told.days.map(dayText).join(' to ') : answerText(told);

const sentence = (words: string): string => {
  const written = words.slice(0, 1).toUpperCase() + words.slice(1);
  return /[.!?]$/.test(written) ? written : `${written}.`;
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
  const things = of === 'crosses' ? 'X marks' : of;
  return `${count} ${count === 1 ? things.replace(/s$/, '') : things}`;
};
