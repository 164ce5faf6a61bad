import { formatDay, yearOf, type CivilDay } from '#core/calendar';
import { amountIn, type RainPeriod, type RainTotal, type WetDays } from '#core/growth';
import { systemOf, type Unit } from '#core/measure';
import type { Series } from '#core/series';
import { amountWords, toldAmount } from './amount-words';
import { dayWords } from './growth-words';
import { daysWords } from '#ui/words';

/** Rain adds up: its totals, told to a child in one sentence and to a grown-up with what is unsure. */

export const rainPeriodWords: Readonly<Record<RainPeriod, string>> = {
  week: 'Week',
  month: 'Month',
  year: 'Year',
};

export const rainWords = {
  addsUp:
    'Rain does not grow, it adds up. Each sum is exact, in the unit that was read. A reading counts on the day it was taken.',
  howCounted:
    'Weeks run from Monday to Sunday. A reading that holds several days is counted once, where it ends. Two readings of one day are added.',
} as const;

/** How many days were wet, with what counts as wet. */
export function wetDayWords(wet: WetDays, { points }: Series, unit: Unit): readonly string[] {
  const { daysRead, moreThanNothing, severalDayTotals, wettest } = wet;
  const marks = points.map(({ mark }) => mark);
  const enough =
    systemOf(unit) === 'customary'
      ? `${wet.atLeastAHundredthInch} had 0.01 inches or more (about 0.25 mm)`
      : `${wet.atLeastOneMillimetre} had 1 mm or more (about 0.04 inches)`;
  const days = wettest?.days ?? [];
  return [
    `Of ${daysWords(daysRead)} with a reading of their own, ${moreThanNothing} had more than 0, and ${enough}.`,
    ...(wettest
      ? [
          `Wettest ${days.length === 1 ? 'day' : 'days'}: ${days.map((day) => formatDay(day, 'long')).join('; ')}, ${amountWords(toldAmount(amountIn(wettest.exact, marks, unit)))}.`,
        ]
      : []),
    ...(severalDayTotals > 0
      ? [
          `${severalDayTotals === 1 ? 'One reading holds' : `${severalDayTotals} readings hold`} several days: nobody can say on which of them it rained, so none of those days is counted here.`,
        ]
      : []),
  ];
}

/** `Mon 2 to Sun 8 Mar 2026`, `March 2026`, `2026`. */
export function periodWords({ firstDay, lastDay }: RainTotal, period: RainPeriod): string {
  if (period === 'year') return String(yearOf(firstDay));
  const [, , month, year] = formatDay(firstDay, 'long').split(' ');
  if (period === 'month') return `${month} ${year}`;
  return `${formatDay(firstDay, 'short')} to ${formatDay(lastDay, 'short')} ${yearOf(lastDay)}`;
}

/** The sum, or that there is none to tell. Any number of traces adds up to a trace. */
export const totalWords = (total: RainTotal, unit: Unit): string => {
  if (total.readings.length > 0) return toldAmount(sumIn(total, unit));
  return total.traceDays > 0 ? 'a trace' : 'no reading';
};

/** What must be known beside a total. */
export function totalNotes({
  severalDays,
  fromBefore,
  traceDays,
  daysWithout,
}: RainTotal): readonly string[] {
  return [
    ...severalDays.map(
      (reading) =>
        `The reading of ${formatDay(reading.day, 'short')} holds ${daysWords(reading.spanDays)}${fromBefore.includes(reading) ? ', and began before this' : ''}.`,
    ),
    ...(traceDays > 0 ? [`${daysWords(traceDays)} just a bit wet (a trace, 0 in the sum).`] : []),
    ...(daysWithout > 0
      ? [`${daysWords(daysWithout)} without a reading: it may have been more.`]
      : []),
  ];
}

/** The newest week in sentences of at most ten words. */
export function childRainWords(
  weeks: readonly RainTotal[],
  unit: Unit,
  today: CivilDay,
): readonly string[] {
  const newest = weeks.findLast(({ readings, traceDays }) => readings.length + traceDays > 0);
  if (!newest) return ['We have no measure yet.'];
  const isThisWeek = today >= newest.firstDay && today <= newest.lastDay;
  if (newest.exact === 0) {
    // A trace adds 0, yet it is not dry.
    const was = newest.traceDays > 0 ? 'just a bit wet' : 'dry';
    return isThisWeek
      ? [`The gauge was ${was} this week.`]
      : [`The gauge was ${was} that week.`, since(newest, today)];
  }
  const sum = amountWords(toldAmount(sumIn(newest, unit)));
  return isThisWeek
    ? [`This week we caught ${sum} of rain.`]
    : [`We caught ${sum} of rain.`, since(newest, today)];
}

const since = ({ firstDay }: RainTotal, today: CivilDay): string =>
  `That was the week from ${dayWords(firstDay, today)}.`;

const sumIn = ({ exact, readings }: RainTotal, unit: Unit) =>
  amountIn(
    exact,
    readings.map(({ mark }) => mark),
    unit,
  );
