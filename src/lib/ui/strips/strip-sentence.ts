import { measuredDays, wordsOf, type StripDay } from './strip-day';

/**
 * What the row shows, in one sentence for someone who does not see it: how many days have a
 * number, the first and the newest. It tells what is there; it draws no conclusion.
 */
export const stripSentence = (label: string, days: readonly StripDay[]): string => {
  const measured = measuredDays(days);
  const first = measured[0];
  const last = measured[measured.length - 1];
  if (!first || !last) return `${label}: nothing measured yet.`;

  const count = `${measured.length} of ${days.length} ${days.length === 1 ? 'day' : 'days'} measured`;
  if (first === last) return `${label}: ${count}, ${wordsOf(first)} on ${inFull(first)}.`;
  return `${label}: ${count}, from ${wordsOf(first)} on ${inFull(first)} to ${wordsOf(last)} on ${inFull(last)}.`;
};

const inFull = (day: StripDay): string => day.dayInFull ?? day.day;
