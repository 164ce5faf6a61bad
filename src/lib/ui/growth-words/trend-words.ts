import { formatDay } from '#core/calendar';
import {
  amountIn,
  decimalText,
  type FurthestReading,
  type GrowthPoint,
  type Shape,
  type Trend,
  type TrendError,
} from '#core/growth';
import type { GraphTrend } from '#core/graphs';
import { systemOf, type Unit } from '#core/measure';
import { amountWords, toldAmount, unitWord } from './amount-words';
import { daysWords } from '#ui/words';
import { markWords } from '#ui/words';

/** The trend, told to a grown-up. */

export const slopeWords: Readonly<Record<GraphTrend['kind'], { name: string; about: string }>> = {
  'median-of-slopes': {
    name: 'Middle slope',
    about:
      'The middle one of the slopes between all pairs of readings; one odd reading hardly moves it.',
  },
  'least-squares': {
    name: 'Closest line',
    about:
      'The slope of the line that comes closest to all the points (least squares); one odd reading can tilt it.',
  },
};

export function trendTooFewWords(error: TrendError): string {
  const missing =
    error.kind === 'too-few'
      ? `There ${error.have === 1 ? 'is a reading on 1 day' : `are readings on ${daysWords(error.have)}`}; ${error.need} are needed, over at least a week.`
      : `The readings span ${daysWords(error.days)}; ${error.need} are needed.`;
  return `Too few days to say. ${missing}`;
}

/** What the readings look like beside the line. */
export const shapeWords: Readonly<Record<Shape['kind'], string>> = {
  'slow-fast-slow':
    'Slow, fast, slow: look at the shape before you call a reading a mistake. A plant often grows so, and one straight line then misleads.',
  'fast-slow-fast':
    'Fast, slow, fast: look at the shape before you call a reading a mistake. One straight line misleads here.',
  'speeding-up':
    'It is speeding up: look at the shape before you call a reading a mistake. One straight line misleads here.',
  'slowing-down':
    'It is slowing down: look at the shape before you call a reading a mistake. One straight line misleads here.',
  'no-curve-seen':
    'No curve can be told from chance here. That does not prove a straight line: with fewer than nine readings or so, none can be seen.',
};

/** What a trend rests on, each fact with its name. */
export const trendFacts = (trend: Trend): readonly (readonly [string, string])[] => {
  const { points, spanDays, gaps, finestMark, coarsestMark, unit } = trend;
  const inUnit = (value: number): string => `${decimalText(value, 2)}${unitWord(unit)}`;
  const [shortest, longest] = [Math.min(...gaps), Math.max(...gaps)];
  const bySize = [...points].sort((one, other) => one.exact - other.exact);
  const [smallest, largest] = [bySize[0]!, bySize.at(-1)!];
  return [
    ['Readings', `on ${daysWords(points.length)}, over ${daysWords(spanDays)}`],
    [
      'Gaps',
      shortest === longest ? `${daysWords(shortest)} each` : `${shortest} to ${daysWords(longest)}`,
    ],
    [
      'Read to the',
      finestMark === coarsestMark
        ? markWords[finestMark]
        : `${markWords[finestMark]} at best, ${markWords[coarsestMark]} at worst`,
    ],
    ['Smallest to largest', `${toldPoint(smallest, unit)} to ${toldPoint(largest, unit)}`],
    [
      'Middle growth',
      `${inUnit(trend.medianGrowthPerDay)} a day, of the changes between neighbours`,
    ],
    ...(isAboutTrend(trend)
      ? [['About', 'some were read in another unit than this page'] as const]
      : []),
  ];
};

/** Whether its figures are only "about": some reading was made in the other system. */
export const isAboutTrend = ({ points, unit }: Trend): boolean =>
  points.some((point) => systemOf(point.unit) !== systemOf(unit));

const toldPoint = ({ exact, mark }: GrowthPoint, unit: Unit): string =>
  amountWords(toldAmount(amountIn(exact, [mark], unit)));

export const trendFigures = (trend: Trend) => [
  {
    kind: 'median-of-slopes',
    name: slopeWords['median-of-slopes'].name,
    line: trend.medianOfSlopes,
  },
  { kind: 'least-squares', name: slopeWords['least-squares'].name, line: trend.leastSquares },
];

export const furthestWords = ({ point, residual }: FurthestReading, unit: Unit): string =>
  `Furthest from the middle line: ${formatDay(point.day, 'short')}, ${decimalText(Math.abs(residual), 2)}${unitWord(unit)} ${residual > 0 ? 'above' : 'below'} it. Worth a look, not a mistake by that alone.`;
