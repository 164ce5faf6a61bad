import type { Result } from '#core/base';
import { daysBetween, formatDay, type CivilDay } from '#core/calendar';
import {
  amountIn,
  perDayText,
  type Change,
  type FastestStretch,
  type FastestStretchError,
} from '#core/growth';
import type { Unit } from '#core/measure';
import { amountWords, toldAmount, unitWord } from './amount-words';
import { daysWords } from '#ui/words';

/** Which stretch was fastest, with what is unsure about it. */
export function fastestWords(
  found: Result<FastestStretch, FastestStretchError>,
  unit: Unit,
  startedOn: CivilDay,
): readonly string[] {
  if (!found.ok) {
    return [
      found.error.kind === 'too-few'
        ? 'Too few to compare: it takes two of the same length.'
        : 'No two stretches have the same number of days, so none can be called the fastest.',
    ];
  }
  const { kind, leaders, leftOut, gapDays, compared } = found.value;
  const caveat =
    leftOut.length === 0
      ? []
      : [
          `${leftOut.length === 1 ? 'One stretch' : `${leftOut.length} stretches`} of another length left out: only stretches of ${daysWords(gapDays)} are held against each other.`,
        ];
  if (kind === 'no-growth') {
    return [`In none of the ${compared.length} compared did it become more.`, ...caveat];
  }
  if (kind === 'one-fastest') {
    return [`${stretchWords(leaders[0] as Change, unit, startedOn)}.`, ...caveat];
  }
  const shown = leaders.slice(0, mostShown).map((each) => stretchWords(each, unit, startedOn));
  const more = leaders.length - shown.length;
  return [
    `${leaders.length} were about the same, too close to name one:`,
    ...shown.map((words, index) =>
      index === shown.length - 1 && more === 0 ? `${words}.` : `${words};`,
    ),
    ...(more > 0 ? [`and ${more} more.`] : []),
    ...caveat,
  ];
}

const mostShown = 3;

/** With the days counted from the start of the log, as growth is told in books. */
const stretchWords = (change: Change, unit: Unit, startedOn: CivilDay): string => {
  const { from, to, exact, gapDays, perDay } = change;
  const amount = amountIn(exact, [from.mark, to.mark], unit);
  const about = amount.isAbout ? 'about ' : '';
  const [first, last] = [from, to].map(({ day }) => daysBetween(startedOn, day));
  return `${formatDay(from.day, 'short')} to ${formatDay(to.day, 'short')} (day ${first} to day ${last}): ${amountWords(toldAmount(amount))} in ${daysWords(gapDays)}, ${about}${perDayText(perDay, unit, 2)}${unitWord(unit)} a day`;
};
