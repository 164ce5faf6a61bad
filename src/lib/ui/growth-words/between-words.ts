import { formatDay, type CivilDay } from '#core/calendar';
import type { BetweenNeighbours } from '#core/growth';
import { formatMeasured } from '#core/measure';
import { amountWords } from './amount-words';

/** A day nobody measured, told with its neighbours; never a number of its own. */

export const betweenAbout =
  'Nothing is put into the log for these days, and the graph leaves their places open.';

export const betweenWords = (
  day: CivilDay,
  { before, after, lowExact, highExact }: BetweenNeighbours,
): string => {
  const told = ({ day: on, measured }: BetweenNeighbours['before']): string =>
    `${formatDay(on, 'short')}’s ${amountWords(formatMeasured(measured))}`;
  const known =
    lowExact === highExact
      ? `It was probably about the same as ${told(before)} and ${told(after)}.`
      : `It was probably between ${told(before)} and ${told(after)}.`;
  return `${formatDay(day, 'long')}: we do not know. ${known}`;
};
