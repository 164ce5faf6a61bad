import type { ClockTime } from '#core/calendar';

/** The places of a day's times along the bottom, all the same distance apart. */
export interface ClockPlaces {
  readonly labels: readonly ClockTime[];
  /** Minutes from midnight to the first place, and from one to the next. */
  readonly first: number;
  readonly step: number;
  /** Places where a reading of the day's rhythm was left out: see `clockPlaces`. */
  readonly skipped: readonly number[];
}

/**
 * Places for times of a day, given in minutes from midnight: the widest of an hour, a half, a
 * third, a quarter, ten, five minutes and one that puts every time on a place. A gap of twice the
 * usual one of the day or more has places left out at the usual distance, unless a state was
 * written inside it; three gaps make one usual. Not part of the public door.
 */
export const clockPlaces = (read: readonly number[], marked: readonly number[]): ClockPlaces => {
  const times = [...new Set([...read, ...marked])].sort((one, other) => one - other);
  const [start, end] = [times.at(0), times.at(-1)];
  if (start === undefined || end === undefined) {
    return { labels: [], first: 0, step: hour, skipped: [] };
  }
  const step = steps.find((each) => times.every((time) => time % each === 0)) ?? 1;
  const count = (end - start) / step + 1;
  return {
    labels: Array.from({ length: count }, (_, index) => clockText(start + index * step)),
    ...{ first: start, step },
    skipped: skippedTimes(times).map((time) => (time - start) / step),
  };
};

const hour = 60;
const steps = [hour, 30, 20, 15, 10, 5, 1];

const skippedTimes = (times: readonly number[]): readonly number[] => {
  const gaps = times.slice(1).map((time, index) => time - (times[index] as number));
  if (gaps.length < 3) return [];
  const usual = gaps.toSorted((one, other) => one - other)[
    Math.floor((gaps.length - 1) / 2)
  ] as number;
  return gaps.flatMap((gap, index) => {
    const left = Math.ceil(gap / usual) - 1;
    return gap < 2 * usual
      ? []
      : Array.from({ length: left }, (_, each) => (times[index] as number) + (each + 1) * usual);
  });
};

const clockText = (minutes: number): ClockTime =>
  [Math.floor(minutes / hour), minutes % hour]
    .map((part) => String(part).padStart(2, '0'))
    .join(':') as ClockTime;
