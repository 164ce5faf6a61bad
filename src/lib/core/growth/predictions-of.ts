import type { CivilDay } from '#core/calendar';
import type { EntryId, Notebook, PersonId, SealedPrediction, SpecimenId } from '#core/journal';
import type { Measured } from '#core/measure';
import { canCompare, dayAmount, missOf, type Miss, type Series } from '#core/series';

/** A prediction as it may be shown on a day. */
export type Prediction = PredictionUnderSeal | OpenPrediction;

/** That there is one, and for when: never its number, and never its because. */
export interface PredictionUnderSeal {
  readonly state: 'sealed';
  readonly id: EntryId;
  /** The day it was written. */
  readonly day: CivilDay;
  readonly forDay: CivilDay;
  readonly author: PersonId | null;
}

export interface OpenPrediction {
  readonly state: 'open';
  readonly id: EntryId;
  readonly day: CivilDay;
  readonly forDay: CivilDay;
  readonly author: PersonId | null;
  readonly measured: Measured;
  readonly because: string;
  /** What the day was read as (`dayAmount`); null when it passed without a number. */
  readonly reading: Measured | null;
  /** The prediction less the reading; these three are null without one to compare with. */
  readonly missExact: number | null;
  readonly direction: Miss['direction'] | null;
  readonly size: Miss['size'] | null;
}

/**
 * The predictions of a specimen in the order they were written; those taken back are left out.
 *
 * This is the only door to the predictions of a notebook: one is sealed until its day has come and
 * that day has a reading, or until its day has passed. It keeps the seal by `today` alone, so a
 * clock that is set back seals it again.
 *
 * @param series the log of the specimen the predictions are about
 * @param today the day it is where the family is
 * @example
 * predictionsOf({ predictions: new Map([['bean', [{ id: 'p', day: '2026-03-09', forDay: '2026-03-10', author: null, takenBack: null, measured: { text: '7', unit: 'cm', mark: '1 cm', exact: 70000000 }, because: 'it grows' }]]]) }, { specimen: { id: 'bean' }, days: [] }, '2026-03-10') // => [{ state: 'sealed', id: 'p', day: '2026-03-09', forDay: '2026-03-10', author: null }]
 */
export const predictionsOf = (
  notebook: Notebook,
  series: Series,
  today: CivilDay,
): readonly Prediction[] =>
  (notebook.predictions.get(series.specimen.id) ?? [])
    .filter((prediction) => prediction.takenBack === null)
    .map((prediction) => {
      const reading = readingOn(series, prediction.forDay);
      const isOpen = prediction.forDay < today || (prediction.forDay === today && reading !== null);
      return isOpen ? opened(prediction, reading) : underSeal(prediction);
    });

/**
 * That somebody predicted, when, and for which day, whatever the day is now: never a number, and
 * never a because. Those taken back are left out.
 * @example
 * sealsOf({ predictions: new Map() }, 'bean') // => []
 */
export const sealsOf = (
  notebook: Pick<Notebook, 'predictions'>,
  specimen: SpecimenId,
): readonly Seal[] =>
  (notebook.predictions.get(specimen) ?? [])
    .filter(({ takenBack }) => takenBack === null)
    .map(({ id, at, author, day, forDay }) => ({ id, at, author, day, forDay }));

/** A prediction from outside. */
export type Seal = Pick<SealedPrediction, 'id' | 'at' | 'author' | 'day' | 'forDay'>;

const underSeal = ({ id, day, forDay, author }: SealedPrediction): PredictionUnderSeal => ({
  ...{ state: 'sealed', id, day, forDay, author },
});

const opened = (
  { id, day, forDay, author, measured, because }: SealedPrediction,
  reading: Measured | null,
): OpenPrediction => {
  const miss = reading && canCompare(measured, reading) ? missOf(measured, reading) : noMiss;
  return { state: 'open', id, day, forDay, author, measured, because, reading, ...miss };
};

const readingOn = (series: Series, day: CivilDay): Measured | null => {
  const found = series.days.find((each) => each.day === day);
  return found ? dayAmount(series, found) : null;
};

const noMiss = { missExact: null, direction: null, size: null } as const;
