import {
  exactPerUnit,
  markById,
  nearestOnMark,
  type Mark,
  type Measured,
  type Unit,
} from '#core/measure';
import { unitWords } from './unit-words';

/** The part of a reading that can be said aloud. */
export type Sayable = Pick<Measured, 'exact' | 'unit' | 'mark'>;

/**
 * A reading said in words, as a grown-up would say it to a child: "four and a half inches",
 * "one inch", "three quarters of an inch", "twelve point five centimetres", "one foot and three
 * inches". Counts have no unit. A value that does not lie on its mark is said to the nearest
 * mark, a half going up. Source of the wording: common practice, no source.
 * @example
 * readingInWords({ exact: 114300000, unit: 'in', mark: '1/2 in' }) // => 'four and a half inches'
 */
export const readingInWords = ({ exact, unit, mark: markId }: Sayable): string => {
  const mark = markById(markId);
  const rounded = nearestOnMark(exact, markId);
  const perUnit = exactPerUnit(unit);
  const whole = Math.floor(rounded / perUnit);
  const rest = rounded - whole * perUnit;
  if (unit === 'count') return wholeNumberInWords(whole);

  const { one, many, article } = unitWords[unit];
  const wholePart = `${wholeNumberInWords(whole)} ${whole === 1 ? one : many}`;
  if (rest === 0) return wholePart;

  if (saysRestInSmallerUnit(unit, mark)) {
    const restPart = readingInWords({ exact: rest, unit: mark.unit, mark: markId });
    return whole === 0 ? restPart : `${wholePart} and ${restPart}`;
  }
  if (mark.writtenAs === 'decimal' && markId !== '0.5 cm') {
    return `${wholeNumberInWords(whole)} ${pointInWords(rest, perUnit)} ${many}`;
  }
  const part = fractionInWords(rest, perUnit);
  if (whole > 0) return `${wholeNumberInWords(whole)} and ${part} ${many}`;
  return part === 'a half' ? `half ${article} ${one}` : `${part} of ${article} ${one}`;
};

/**
 * A whole number in words, from 0 to 199; any other number stays in figures.
 * @example
 * wholeNumberInWords(112) // => 'one hundred and twelve'
 */
export const wholeNumberInWords = (whole: number): string => {
  if (!Number.isInteger(whole) || whole < 0 || whole > 199) return String(whole);
  if (whole === 100) return 'one hundred';
  if (whole > 100) return `one hundred and ${wholeNumberInWords(whole - 100)}`;
  if (whole < 20) return smallNumbers[whole]!;
  const ten = tens[Math.floor(whole / 10)]!;
  return whole % 10 === 0 ? ten : `${ten}-${smallNumbers[whole % 10]}`;
};

/** Feet and yards are not cut in tenths: what is left over is said in inches or feet. */
const saysRestInSmallerUnit = (unit: Unit, mark: Mark): boolean =>
  (unit === 'ft' || unit === 'yd') && mark.unit !== unit;

/** Halves, quarters, eighths and sixteenths have names of their own. */
const fractionInWords = (rest: number, perUnit: number): string => {
  for (const [parts, one, many] of namedParts) {
    const count = (rest * parts) / perUnit;
    if (count === 1) return one;
    if (Number.isInteger(count)) return `${wholeNumberInWords(count)} ${many}`;
  }
  return pointInWords(rest, perUnit);
};

/** Tenths, hundredths and thousandths are said figure by figure. */
const pointInWords = (rest: number, perUnit: number): string => {
  const figures = String(Math.round((rest * 1000) / perUnit))
    .padStart(3, '0')
    .replace(/0+$/, '');
  return ['point', ...Array.from(figures, (figure) => wholeNumberInWords(Number(figure)))].join(
    ' ',
  );
};

const namedParts = [
  [2, 'a half', 'halves'],
  [4, 'a quarter', 'quarters'],
  [8, 'one eighth', 'eighths'],
  [16, 'one sixteenth', 'sixteenths'],
] as const;

const smallNumbers = [
  ...['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'],
  ...['ten', 'eleven', 'twelve', 'thirteen', 'fourteen', 'fifteen', 'sixteen', 'seventeen'],
  ...['eighteen', 'nineteen'],
];

const tens = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];
