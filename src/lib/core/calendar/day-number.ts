/**
 * Civil days as whole numbers: 0 is 1970-01-01, 1 the day after.
 *
 * Invariant: no clock, no zone and no milliseconds take part, so that a day of 23 hours is a day.
 * Source: the proleptic Gregorian calendar (leap years every 4, not every 100, again every 400);
 * the year is taken to begin in March, so that the leap day comes last and month lengths follow
 * one formula, (153 m + 2) / 5 (H. Hinnant, "chrono-Compatible Low-Level Date Algorithms").
 */
export const dayNumberOf = (year: number, month: number, dayOfMonth: number): number => {
  const marchYear = month > 2 ? year : year - 1;
  const monthsSinceMarch = (month + 9) % 12;
  return (
    365 * marchYear +
    leapDaysBefore(marchYear) +
    Math.floor((153 * monthsSinceMarch + 2) / 5) +
    dayOfMonth -
    1 -
    daysFromYearZeroTo1970
  );
};

/** The year, month (1 to 12) and day of the month (from 1) of a day number. */
export const datePartsOf = (
  dayNumber: number,
): { readonly year: number; readonly month: number; readonly dayOfMonth: number } => {
  const days = dayNumber + daysFromYearZeroTo1970;
  const cycle = Math.floor(days / daysIn400Years);
  const dayOfCycle = days - cycle * daysIn400Years;
  const yearOfCycle = Math.floor(
    (dayOfCycle -
      Math.floor(dayOfCycle / 1460) +
      Math.floor(dayOfCycle / 36_524) -
      Math.floor(dayOfCycle / 146_096)) /
      365,
  );
  const dayOfYear = dayOfCycle - (365 * yearOfCycle + leapDaysBefore(yearOfCycle));
  const monthsSinceMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const month = monthsSinceMarch < 10 ? monthsSinceMarch + 3 : monthsSinceMarch - 9;
  return {
    year: cycle * 400 + yearOfCycle + (month <= 2 ? 1 : 0),
    month,
    dayOfMonth: dayOfYear - Math.floor((153 * monthsSinceMarch + 2) / 5) + 1,
  };
};

/** How many days the month has. */
export const daysInMonth = (year: number, month: number): number => {
  if (month === 2) return isLeapYear(year) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
};

const isLeapYear = (year: number): boolean =>
  (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

const leapDaysBefore = (marchYear: number): number =>
  Math.floor(marchYear / 4) - Math.floor(marchYear / 100) + Math.floor(marchYear / 400);

const daysIn400Years = 146_097;
/** From 0000-03-01 to 1970-01-01. */
const daysFromYearZeroTo1970 = 719_468;
