import { predictionBand, predictionOffer } from '#core/growth';
import type { CivilDay } from '#core/calendar';
import { markById } from '#core/measure';
import type { Series, SeriesPoint } from '#core/series';
import type { LessonFacts } from './lesson-facts';
import { areAlike, newestSure } from './log-of-table';

/** How far a log may reach on the next day it is read. Not part of the public door. */
export interface PredictionOfLog {
  readonly day: CivilDay;
  readonly last: SeriesPoint;
  readonly lowExact: number;
  /** On a mark, so that a child can name it. */
  readonly highExact: number;
}

/**
 * What a child's guess for the next planned day is held against; null while nothing may be
 * predicted, where one of the four newest readings is doubted, where they are of two units or marks,
 * and where it stood still, so that there is no range. Not part of the public door.
 */
export const predictionOfLog = (facts: LessonFacts, series: Series): PredictionOfLog | null => {
  const points = newestSure(facts, series);
  const offer = predictionOffer(series, facts.today);
  const last = points?.at(-1);
  if (!last || !offer.ok || !areAlike(points!)) return null;
  const { day } = offer.value.find(({ planned }) => planned) ?? offer.value[0]!;
  const band = predictionBand(series, day);
  if (!band.ok) return null;
  const { lowExact } = band.value;
  const markExact = markById(last.mark).exact;
  const highExact = Math.ceil(band.value.highExact / markExact) * markExact;
  return highExact > lowExact ? { day, last, lowExact, highExact } : null;
};
