import { formatDay, weekdayName, type CivilDay } from '#core/calendar';
import { sumAnswer, sumUnknowns, type Sum } from '#core/lessons';
import type { Told } from '#core/questions';
import type { Unit } from '#core/measure';
import { answerText } from '#ui/ladder-words';

/** A sum told as a story of the log: what is told, and what is asked. */
export interface SumStoryText {
  readonly told: readonly string[];
  readonly ask: string;
}

/** The story of a sum, in sentences a child reads. */
export const storyOf = (sum: Sum): SumStoryText => {
  if (sum.story === 'grew') return grewStory(sum);
  if (sum.story === 'together') return togetherStory(sum);
  return sum.thing === 'days' ? moreDaysStory(sum) : moreStory(sum);
};

/** A number of a sum with its unit: `5 inches`, `1 inch`, `5 cm`, `5 days`. */
export const amountText = (number: number, unit: Unit): string => {
  if (unit === 'count') return `${number} ${number === 1 ? 'day' : 'days'}`;
  if (unit === 'in') return `${number} ${number === 1 ? 'inch' : 'inches'}`;
  return `${number} ${unit}`;
};

/** `8 + ? = 13`; with the answer in its place when it is known. */
export const equationText = (sum: Sum, isAnswered: boolean): string => {
  const [start, change, result] = sumUnknowns.map((each) =>
    each === sum.unknown && !isAnswered ? '?' : String(sum[each]),
  );
  return `${start} + ${change} = ${result}`;
};

/** The answer with its unit. */
export const sumAnswerText = (sum: Sum): string => amountText(sumAnswer(sum), sum.unit);

/** Where the numbers of a sum stand in the log; empty for counts of days. */
export const sourceText = ({ first, second }: Sum): string => {
  const days = [first, second].flatMap((each) => (each.kind === 'day' ? [each.day] : []));
  return days.map((day) => formatDay(day, 'short')).join(', ');
};

const grewStory = (sum: Sum): SumStoryText => {
  const [from, to] = [whenText(sum.first), whenText(sum.second)];
  const [start, change, result] = amounts(sum);
  const name = sum.of === '' ? 'a toy plant' : sum.of;
  const long = sum.thing === 'length' ? 'long' : 'tall';
  if (sum.unknown === 'change')
    return {
      told: [`${from}: ${name} was ${start}.`, `${to}: it was ${result}.`],
      ask: 'How much did it grow?',
    };
  if (sum.unknown === 'result')
    return {
      told: [`${from}: ${name} was ${start}.`, `Then it grew ${change}.`],
      ask: `How ${long} was it on ${to}?`,
    };
  return {
    told: [`From ${from} on, ${name} grew ${change}.`, `${to}: it was ${result}.`],
    ask: `How ${long} was it on ${from}?`,
  };
};

const togetherStory = (sum: Sum): SumStoryText => {
  const [from, to] = [whenText(sum.first), whenText(sum.second)];
  const [start, change, result] = amounts(sum);
  const [one, other] = [`${from}: ${start} of rain.`, `${to}: ${change} of rain.`];
  if (sum.unknown === 'result') return { told: [one, other], ask: 'How much rain was it in all?' };
  const isLast = sum.unknown === 'change';
  return {
    told: [isLast ? one : other, `Both days had ${result} in all.`],
    ask: `How much rain was there on ${isLast ? to : from}?`,
  };
};

const moreStory = (sum: Sum): SumStoryText => {
  const [shorter, longer] = [answerText(sum.first), answerText(sum.second)];
  const [start, change, result] = amounts(sum);
  const first = `At ${shorter} the shadow was ${start}.`;
  if (sum.unknown === 'change')
    return {
      told: [first, `At ${longer} it was ${result}.`],
      ask: `How much more was it at ${longer}?`,
    };
  return {
    told: [first, `At ${longer} it was ${change} more.`],
    ask: `How long was it at ${longer}?`,
  };
};

const moreDaysStory = (sum: Sum): SumStoryText => {
  const [fewer, more] = [answerText(sum.first), answerText(sum.second)];
  const [start, change, result] = amounts(sum);
  const first = `We marked “${fewer}” on ${start}.`;
  if (sum.unknown === 'change')
    return {
      told: [first, `We marked “${more}” on ${result}.`],
      ask: `How many more days had “${more}”?`,
    };
  return {
    told: [first, `“${more}” came on ${change} more.`],
    ask: `How many days had “${more}”?`,
  };
};

const amounts = ({ start, change, result, unit }: Sum) =>
  [start, change, result].map((each) => amountText(each, unit)) as [string, string, string];

const whenText = (told: Told): string =>
  told.kind === 'day' ? dayName(told.day) : answerText(told);

const dayName = (day: CivilDay): string => weekdayName(day, 'long');
