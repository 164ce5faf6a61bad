import { oneOf, type Random } from '#core/base';
import { addDays, type CivilDay } from '#core/calendar';
import type { Stage } from '#core/journal';
import type { UnitFamily } from './starter';
import { isFair } from './review-log-sums';
import { isRegrouped, sumRange, type Sum, type SumUnknown } from './review-sum';

/**
 * A made-up sum for a log that is too young to tell one: a toy stem on a Monday and a Friday. It is
 * always to be marked "practice numbers, not ours".
 * @param wish which of the three is asked, and whether ones are to be carried over a ten
 * @example
 * practiceSum('grade-2', 'inches', { unknown: 'change', isRegrouped: true }, () => 0.5).isPractice // => true
 */
export const practiceSum = (
  stage: Stage,
  family: UnitFamily,
  wish: { readonly unknown: SumUnknown; readonly isRegrouped: boolean },
  random: Random,
): Sum => {
  const most = mostByStage[stage];
  const start = wholes(2, most - 2);
  const fitting = start
    .flatMap((each) => wholes(2, most - each).map((change) => sumOf(each, change, family, wish)))
    .filter((sum) => isRegrouped(sum) === wish.isRegrouped && isFair(sum))
    .filter((sum) => sumRange(sum, stage) !== null);
  return oneOf(fitting, random);
};

const sumOf = (
  start: number,
  change: number,
  family: UnitFamily,
  { unknown }: { readonly unknown: SumUnknown },
): Sum => ({
  ...{ story: 'grew', thing: 'height', of: '', specimen: null },
  unit: family === 'inches' ? 'in' : 'cm',
  ...{ first: { kind: 'day', day: monday }, second: { kind: 'day', day: addDays(monday, 4) } },
  ...{ start, change, result: start + change, unknown, isPractice: true },
});

/** As tall as a toy stem is believed to be. */
const mostByStage: Readonly<Record<Stage, number>> = {
  'grade-1': 20,
  'grade-2': 60,
  'grade-3': 90,
};

/** A Monday of no log: only its name is told. */
const monday = '2001-01-01' as CivilDay;

const wholes = (from: number, to: number): readonly number[] =>
  Array.from({ length: Math.max(0, to - from + 1) }, (_, index) => from + index);
