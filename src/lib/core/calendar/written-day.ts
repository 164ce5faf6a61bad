import { parseClockTime } from './clock-time';
import { monthNames } from './month';
import { weekdayNames } from './weekday';

/**
 * How a day was written, before it is known whether there is such a day: the three numbers, and
 * whether the writing tells day from month. Not part of the public door.
 */
export type WrittenDay =
  | {
      readonly form: 'plain';
      readonly year: number;
      readonly month: number;
      readonly dayOfMonth: number;
      /** The weekday written beside it, Monday 0. */
      readonly weekdayIndex?: number;
    }
  | {
      readonly form: 'either-order';
      readonly first: number;
      readonly second: number;
      readonly year: number;
    }
  | { readonly form: 'two-digit-year' };

/** Splits text into its numbers, or undefined when it is not written like a day at all. */
export const writtenDayOf = (text: string): WrittenDay | undefined => {
  if (text.length > longestText) return undefined;
  const dayPart = withoutTime(text.trim().replace(/\s+/g, ' '));
  if (dayPart === undefined) return undefined;
  return yearFirst(dayPart) ?? inNumbers(dayPart) ?? inWords(dayPart);
};

/** The date part as written: a zone beside the time does not move the day. */
const withoutTime = (text: string): string | undefined => {
  const read = /^(.*?\d)(?:T|,? )(\d{1,2}[:.]\d{2}.*)$/i.exec(withTimeInExtendedForm(text));
  if (!read) return text;
  const time = (read[2] as string).replace(/ ?(?:Z|[+-]\d{2}(?::?\d{2})?)$/i, '');
  return parseClockTime(time.replace(/(:\d{2})[.,]\d+$/, '$1')).ok ? read[1] : undefined;
};

/** ISO 8601 may write `20260309T0730` for `20260309T07:30`. */
const withTimeInExtendedForm = (text: string): string =>
  text
    .replace(/^(\d{8}T\d{2})(\d{2})(\d{2})(?!\d)/i, '$1:$2:$3')
    .replace(/^(\d{8}T\d{2})(\d{2})(?!\d)/i, '$1:$2');

const yearFirst = (text: string): WrittenDay | undefined => {
  const read =
    /^(\d{4})([-/.])(\d{1,2})\2(\d{1,2})$/.exec(text) ?? /^(\d{4})()(\d{2})(\d{2})$/.exec(text);
  if (!read) return undefined;
  return {
    form: 'plain',
    year: Number(read[1]),
    month: Number(read[3]),
    dayOfMonth: Number(read[4]),
  };
};

const inNumbers = (text: string): WrittenDay | undefined => {
  const read = /^(\d{1,2}) ?([-/.]) ?(\d{1,2}) ?\2 ?(\d{2}|\d{4})$/.exec(text);
  if (!read) return undefined;
  return (read[4] as string).length === 2
    ? { form: 'two-digit-year' }
    : {
        form: 'either-order',
        first: Number(read[1]),
        second: Number(read[3]),
        year: Number(read[4]),
      };
};

const inWords = (text: string): WrittenDay | undefined => {
  const read = dayBeforeMonth.exec(text)?.groups ?? monthBeforeDay.exec(text)?.groups;
  if (!read) return undefined;
  const month = indexOfName(monthNames, read['month']);
  if (month === undefined) return undefined;
  const weekdayIndex = read['weekday'] ? indexOfName(weekdayNames, read['weekday']) : undefined;
  if (read['weekday'] && weekdayIndex === undefined) return undefined;
  if ((read['year'] as string).length === 2) return { form: 'two-digit-year' };
  return {
    form: 'plain',
    year: Number(read['year']),
    month: month + 1,
    dayOfMonth: Number(read['day']),
    ...(weekdayIndex === undefined ? {} : { weekdayIndex }),
  };
};

/** A name in full or cut short; the patterns below see to at least three letters. */
const indexOfName = (names: readonly string[], written = ''): number | undefined => {
  const index = names.findIndex((name) => name.toLowerCase().startsWith(written.toLowerCase()));
  return index < 0 ? undefined : index;
};

const weekdayPart = '(?:(?<weekday>[a-z]{3,9})\\.?,? )?';
const dayOfMonthPart = '(?<day>\\d{1,2})(?:st|nd|rd|th)?';
const monthPart = '(?<month>[a-z]{3,9})\\.?';
const yearPart = "'?(?<year>\\d{2}|\\d{4})";
const dayBeforeMonth = new RegExp(
  `^${weekdayPart}${dayOfMonthPart}[ -](?:of )?${monthPart},?[ -]${yearPart}$`,
  'i',
);
const monthBeforeDay = new RegExp(
  `^${weekdayPart}${monthPart} ${dayOfMonthPart},? ${yearPart}$`,
  'i',
);
const longestText = 60;
