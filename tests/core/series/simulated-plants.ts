import { seededRandom } from '#core/base';
import { addDays, civilDay, weekdayOf, type CivilDay } from '#core/calendar';
import type { EntryId, SpecimenId } from '#core/journal';
import type { MarkId, Measured, Unit } from '#core/measure';
import { exactPerUnit, nearestOnMark } from '#core/measure';
import type { Series, SeriesPoint } from '#core/series';

/**
 * Plants that never were, to count questions with. Given: heights rise in an S to 15 to 45 cm, a
 * reading is off by 0.35 cm (standard deviation), 8 % of days are missed. Chosen here, because
 * nothing is given: the S is logistic, at a rate of 0.3 to 0.45 a day, from 0.5 to 1 cm on the
 * first day, over 28 days. A model, not field data.
 */
export interface PlantModel {
  readonly ratePerDay: readonly [number, number];
  readonly finalCm: readonly [number, number];
  readonly noiseCm: number;
  readonly weekdays: number;
  readonly unit: Unit;
  readonly mark: MarkId;
}

export const usualPlants: PlantModel = {
  ...{ ratePerDay: [0.3, 0.45], finalCm: [15, 45], noiseCm: 0.35, weekdays: 5 },
  ...{ unit: 'cm', mark: '1 cm' },
};

export interface SimulatedPlant {
  readonly log: readonly SimulatedReading[];
  /** The pot is 8 to 12 cm high. */
  readonly potCm: number;
}

export interface SimulatedReading {
  readonly day: CivilDay;
  readonly trueCm: number;
  readonly measured: Measured;
}

export function simulatedPlants(
  count: number,
  seed: number,
  model: PlantModel = usualPlants,
): readonly SimulatedPlant[] {
  const random = seededRandom(seed);
  const between = ([least, most]: readonly [number, number]) => least + (most - least) * random();
  return Array.from({ length: count }, () => {
    const [finalCm, rate, atFirstCm] = [
      between(model.finalCm),
      between(model.ratePerDay),
      between([0.5, 1]),
    ];
    const middleDay = Math.log(finalCm / atFirstCm - 1) / rate;
    const firstDay = addDays(civilDay('2026-03-02'), Math.floor(random() * 7));
    const log: SimulatedReading[] = [];
    for (let since = 0; since < 28; since += 1) {
      const day = addDays(firstDay, since);
      if (weekdayOf(day) > model.weekdays || random() < 0.08) continue;
      const trueCm = finalCm / (1 + Math.exp(-rate * (since - middleDay)));
      const readCm = trueCm + model.noiseCm * gaussian(random);
      log.push({ day, trueCm, measured: readTo(readCm, model) });
    }
    return { log, potCm: between([8, 12]) };
  });
}

/** What is read of a length: never less than nothing, to the nearest mark. */
export const readTo = (cm: number, { unit, mark }: Pick<PlantModel, 'unit' | 'mark'>): Measured =>
  ofExact(Math.max(0, nearestOnMark(cm * exactPerUnit('cm'), mark)), unit, mark);

export const ofExact = (exact: number, unit: Unit, mark: MarkId): Measured => ({
  text: String(exact / exactPerUnit(unit)),
  ...{ unit, mark, exact },
});

/** A log of plant heights as a series, with points alone: all that doubts look at. */
export const seriesOfReadings = (
  log: readonly { readonly day: CivilDay; readonly measured: Measured }[],
  standCm?: number,
): Series => ({
  specimen: {
    ...{ id: 'plant' as SpecimenId, name: 'Bean', ended: null },
    startedOn: log[0]?.day ?? civilDay('2026-03-02'),
    ...(standCm === undefined ? {} : { standHeight: ofExact(standCm * 1e7, 'cm', '0.1 mm') }),
  } as Series['specimen'],
  investigation: { quantity: 'plant-height' } as Series['investigation'],
  days: [],
  points: log.map(({ day, measured: { exact, unit, mark } }, index): SeriesPoint => ({
    ...{ day, exact, unit, mark, spanDays: 1, reading: `r${index}` as EntryId },
  })),
});

/** One draw of a bell curve of mean 0 and standard deviation 1 (Box and Muller 1958). */
export const gaussian = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** The digits of a two-digit number turned round; null where nothing would change, or a 0 lead. */
export function digitsTurned({ exact, unit, mark }: Measured): Measured | null {
  const whole = exact / exactPerUnit(unit);
  const [tens, ones] = [Math.floor(whole / 10), whole % 10];
  if (!Number.isInteger(whole) || tens < 1 || tens > 9 || ones === 0 || tens === ones) return null;
  return ofExact((ones * 10 + tens) * exactPerUnit(unit), unit, mark);
}
