import { addDays, mondayOf, type CivilDay } from '#core/calendar';
import { exactPerUnit } from '#core/measure';
import type { Series, SeriesDay } from '#core/series';
import { isOfOneDay } from './one-day-amount';
import { mostSquaresUp } from './paper-room';
import { sharedDays } from './side-by-side-table';
import type { TableSource } from './table-choice';
import type { TableSpan } from './table-offer';

/** Days to look at, both included. */
export interface SpanChoice {
  readonly span: TableSpan;
  readonly from: CivilDay;
  readonly to: CivilDay;
}

/**
 * The spans of days a table may be of: from the first day with something for it to the last; and,
 * in a longer log, the latest ten of them and the first ten (weeks, for a table of weeks). A table
 * of one day has the day with most, the latest of several. Not part of the public door.
 */
export const spanChoices = (
  source: TableSource,
  logs: readonly Series[],
): readonly SpanChoice[] => {
  if (source === 'values-side-by-side') return sharedSpans(logs);
  const days = [
    ...new Set(
      logs.flatMap((series) =>
        series.days.filter((day) => hasContent(source, day)).map(({ day }) => day),
      ),
    ),
  ].sort();
  const [first, last] = [days.at(0), days.at(-1)];
  if (!first || !last) return [];
  if (isTableOfOneDay(source, logs)) {
    const day = dayWithMost(source, logs, days);
    return [{ span: 'one-day', from: day, to: day }];
  }
  const whole = { span: 'whole', from: first, to: last } as const;
  const starts = source === 'week-values' ? [...new Set(days.map(mondayOf))].sort() : days;
  const fitting = source === 'day-values' ? spanThatFits(logs, first) : [];
  if (starts.length <= ten) return [whole, ...fitting.filter(({ to }) => to < last)];
  const tenth = starts[ten - 1] as CivilDay;
  const endOfTen = source === 'week-values' ? addDays(tenth, 6) : tenth;
  return [
    whole,
    { span: 'latest-ten', from: starts.at(-ten) as CivilDay, to: last },
    { span: 'first-ten', from: first, to: endOfTen },
    ...fitting.filter(({ to }) => to < endOfTen),
  ];
};

/** To the last day before the first value that has more units than the paper has squares. */
const spanThatFits = (logs: readonly Series[], first: CivilDay): readonly SpanChoice[] => {
  const points = logs.flatMap((series) =>
    series.points.filter((point) => point.day >= first && isOfOneDay(point)),
  );
  const tooTall = points.find(({ exact, unit }) => exact > mostSquaresUp * exactPerUnit(unit));
  const last = tooTall && points.findLast(({ day }) => day < tooTall.day);
  return last ? [{ span: 'first-that-fit', from: first, to: last.day }] : [];
};

/** The latest four days that two logs share, and the latest four whose bars fit the paper. */
const sharedSpans = ([first, ...others]: readonly Series[]): readonly SpanChoice[] => {
  const shared = first ? sharedDays(first, others).map(([{ day }]) => day) : [];
  const fits = (day: CivilDay): boolean =>
    [first, ...others].every((series) =>
      series?.points.every(
        (point) => point.day !== day || point.exact <= mostSquaresUp * exactPerUnit(point.unit),
      ),
    );
  const lastFour = (days: readonly CivilDay[], span: TableSpan): readonly SpanChoice[] => {
    const [from, to] = [days.slice(-daysSideBySide).at(0), days.at(-1)];
    return from && to ? [{ span, from, to }] : [];
  };
  const tooTall = shared.findIndex((day) => !fits(day));
  return [
    ...lastFour(shared, 'latest-shared'),
    ...(tooTall > 0 ? lastFour(shared.slice(0, tooTall), 'shared-that-fit') : []),
  ];
};

/** With two logs as many bars as one of ten days has, and room for what each is called. */
const daysSideBySide = 4;
const ten = 10;

const hasContent = (
  source: TableSource,
  { state, readings, words, planned }: SeriesDay,
): boolean => {
  switch (source) {
    case 'kind-days':
      return words.length > 0;
    case 'weather-days':
      return readings.some(({ weather }) => weather !== undefined);
    case 'state-days':
      return state !== 'word' && (state !== 'blank' || planned);
    case 'wet-days':
      return state === 'number' || state === 'trace';
    case 'hour-values':
    case 'hours-in-order':
      return readings.some(({ time }) => time !== undefined);
    default:
      return state === 'number';
  }
};

/** Things that do not grow may be measured on different days; all else is compared on one. */
const isTableOfOneDay = (source: TableSource, logs: readonly Series[]): boolean =>
  ['reads-of-one', 'hour-values', 'hours-in-order'].includes(source) ||
  (source === 'each-specimen' && logs[0]?.investigation.quantity !== 'length');

const dayWithMost = (
  source: TableSource,
  logs: readonly Series[],
  days: readonly CivilDay[],
): CivilDay => {
  const amountByDay = new Map(days.map((day) => [day, 0]));
  for (const { day, readings } of logs.flatMap((series) => series.days)) {
    const before = amountByDay.get(day);
    if (before !== undefined) amountByDay.set(day, before + amountIn(source, readings));
  }
  const most = Math.max(...amountByDay.values());
  return days.findLast((day) => amountByDay.get(day) === most) as CivilDay;
};

const amountIn = (source: TableSource, readings: SeriesDay['readings']): number => {
  if (source === 'each-specimen') return readings.length > 0 ? 1 : 0;
  if (source === 'reads-of-one') return readings.flatMap(({ all }) => all).length;
  return readings.filter(({ time }) => time !== undefined).length;
};
