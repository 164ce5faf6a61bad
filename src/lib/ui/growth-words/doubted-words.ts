import { formatDay, type CivilDay } from '#core/calendar';
import { amountIn } from '#core/growth';
import type { DoubtAnswer, Reading } from '#core/journal';
import { formatMeasured, type MarkId, type Unit } from '#core/measure';
import type { Doubt, SeriesPoint } from '#core/series';
import { daysWords } from '#ui/words';
import { amountWords, toldAmount } from './amount-words';

/** What a doubt asks, told to the grown-up, and what it would mean for the number. */
export interface DoubtedWords {
  readonly question: string;
  readonly meaning: string;
}

/** Numbers that may be a slip. Every one may also be just what was read. */
export function doubtedWords(doubt: Doubt, { counted }: Pick<Reading, 'counted'>): DoubtedWords {
  const { unit, mark } = counted;
  const told = (exact: number, inUnit: Unit = unit): string => exactWords(exact, mark, inUnit);
  switch (doubt.kind) {
    case 'zero-or-missed':
      return {
        question: 'Was there no plant to measure, or was the day missed?',
        meaning: `It was ${pointWords(doubt.last)} before. A day nobody measured is left without a number: it is not 0.`,
      };
    case 'other-side':
      return {
        question: `Was it the ${doubt.perhapsUnit === 'in' ? 'inch' : 'centimetre'} side of the ruler?`,
        meaning: `Then it is ${counted.text} ${doubt.perhapsUnit}, which is about as long as ${told(doubt.perhapsExact)}.`,
      };
    case 'ten-times-too-long':
      return {
        question: doubt.perhapsUnit ? 'Was it read in millimetres?' : 'Did the decimal point slip?',
        meaning: `Then it was ${told(doubt.perhapsExact)}, a tenth of what is written.`,
      };
    case 'ten-times-too-short':
      return {
        question: doubt.perhapsUnit ? 'Was it read in centimetres?' : 'Did the decimal point slip?',
        meaning: `Then it was ${told(doubt.perhapsExact)}, ten times what is written.`,
      };
    case 'digits-swapped':
      return {
        question: 'Did the two digits change places?',
        meaning: `Then it was ${told(doubt.perhapsExact)}.`,
      };
    case 'stand-counted':
      return {
        question: 'Was the pot or the stake measured with the plant?',
        meaning: `It stands ${amountWords(formatMeasured(doubt.stand))} high. Without it the plant was ${told(doubt.perhapsExact)}.`,
      };
    case 'ruler-upside-down':
      return {
        question: 'Did the ruler stand on its head?',
        meaning: `On a ruler of ${told(doubt.rulerExact)} that leaves ${told(doubt.perhapsExact)}.`,
      };
    case 'other-plant':
      return {
        question: `Is it the number of ${doubt.name}?`,
        meaning: `It would fit there, where the last one was ${pointWords(doubt.itsLast)}.`,
      };
    case 'same-number-again':
      return {
        question: 'Was it measured anew each day?',
        meaning: `The same number for ${daysWords(doubt.days)}, since ${formatDay(doubt.since, 'short')}, just after it grew fast. It may have stopped; or the number before was looked at.`,
      };
    case 'shrank':
      return {
        question: 'Did the stem bend, the soil rise, or the tip break?',
        meaning: `${upperFirst(told(doubt.lessExact))} less than ${pointWords(doubt.last)}. All three happen; a note in the log helps to remember.`,
      };
    case 'big-jump':
      return {
        question: 'Can it be measured once more?',
        meaning: `${upperFirst(told(doubt.moreExact))} more than ${pointWords(doubt.last)}, in ${daysWords(doubt.gapDays)}. No common slip explains it.`,
      };
    case 'past-the-cap':
      return {
        question: 'Is the number, and its unit, as it was read?',
        meaning: `It is more than ${told(doubt.capExact)}, which hardly ever comes.`,
      };
    case 'rain-unit':
      return {
        question: 'Inches, or millimetres?',
        meaning: `${counted.text} mm is about ${told(doubt.perhapsExact)}.`,
      };
    case 'rain-as-before':
      return {
        question: 'Was the gauge emptied?',
        meaning: `The number is that of ${formatDay(doubt.before.day, 'short')}, to the mark. Water left in is counted twice in a sum.`,
      };
    case 'rain-though-dry':
      return {
        question: 'A sprinkler, or dew?',
        meaning: `The word for the day was ${doubt.weather}. Rain may also have come in the night.`,
      };
    case 'shadow-zero':
      return {
        question: 'Was there no sun?',
        meaning: 'Then it is a day with no shadow to measure, not a shadow of 0.',
      };
    case 'midday-longer':
      return {
        question: 'Is the time right: morning or afternoon?',
        meaning: `It is longer than in the morning (${exactWords(doubt.morning.exact, doubt.morning.mark, doubt.morning.unit)}). A shadow is shortest about midday.`,
      };
    case 'shadow-not-as-before':
      return {
        question: 'The same stick, at the same place?',
        meaning: `At that time it was ${pointWords(doubt.before)}: ${Math.round(doubt.shareOff * 100)} % off. A leaning stick or sloping ground does that too.`,
      };
  }
}

export const answerWords: Readonly<Record<DoubtAnswer, string>> = {
  'read-so': 'It was read so.',
  'look-again': 'Somebody wanted to look again, and the number stands.',
  'other-unit': 'It was said to be another unit, and the number stands.',
};

export const doubtListWords = {
  title: 'Numbers to look at together',
  about:
    'Each of these may be just what was read, or a slip of the hand. Best asked while it can still be looked at. Nothing is changed until you mend it, and every graph shows it meanwhile.',
  none: 'No number waits to be looked at.',
  readSo: 'It was read so',
  mend: 'Mend it in the log',
} as const;

/** `2 numbers to look at together`. */
export const doubtsWaitingWords = (count: number): string =>
  count === 1 ? '1 number to look at together' : `${count} numbers to look at together`;

export const doubtedDayWords = (day: CivilDay, { counted }: Pick<Reading, 'counted'>): string =>
  `${formatDay(day, 'long')}: ${amountWords(formatMeasured(counted))}`;

const exactWords = (exact: number, mark: MarkId, unit: Unit): string =>
  amountWords(toldAmount(amountIn(exact, [mark], unit)));

const pointWords = ({ exact, mark, unit, day }: SeriesPoint): string =>
  `${exactWords(exact, mark, unit)} on ${formatDay(day, 'short')}`;

const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
