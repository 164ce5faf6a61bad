import { formatDay, type CivilDay } from '#core/calendar';
import type { Measured } from '#core/measure';
import { answerText } from '#ui/ladder-words';

/** A measure with its unit, as it was read. */
export const lengthText = ({ exact, unit, mark }: Measured): string =>
  answerText({ kind: 'length', exact, unit, mark });

export const dayText = (day: CivilDay): string => formatDay(day, 'short');
