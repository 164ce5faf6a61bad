import { exactPerUnit, type Measured } from '#core/measure';
import { doubtsAbout, type DoubtKind } from '#core/series';
import { isOutsidePlainWindow } from './plain-window';
import {
  digitsTurned,
  ofExact,
  readTo,
  seriesOfReadings,
  type PlantModel,
  type SimulatedPlant,
  type SimulatedReading,
} from './simulated-plants';

/** Whether a number is asked about, by one rule or another. */
export type Asks = (
  plant: SimulatedPlant,
  before: readonly SimulatedReading[],
  candidate: Pick<SimulatedReading, 'day' | 'measured'>,
) => boolean;

export const plainWindow: Asks = (_plant, before, candidate) =>
  isOutsidePlainWindow(before, candidate);

/** What the notebook asks, but for "the same number again", which the plain window has not. */
export const ourDoubts: Asks = (plant, before, candidate) =>
  kindsAsked(plant, before, candidate).some((kind) => kind !== 'same-number-again');

export const kindsAsked = (
  plant: SimulatedPlant,
  before: readonly SimulatedReading[],
  candidate: Pick<SimulatedReading, 'day' | 'measured'>,
): readonly DoubtKind[] =>
  doubtsAbout(candidate, seriesOfReadings(before, plant.potCm), []).map(({ kind }) => kind);

/** Questions about honest readings, for each project. */
export const falsePerProject = (plants: readonly SimulatedPlant[], asks: Asks): number =>
  plants.reduce(
    (sum, plant) =>
      sum +
      plant.log.filter((reading, index) => asks(plant, plant.log.slice(0, index), reading)).length,
    0,
  ) / plants.length;

/** The share of slips asked about, in percent, by slip and height of the plant. */
export function caughtBySlip(
  plants: readonly SimulatedPlant[],
  asks: Asks,
  model: PlantModel,
): Readonly<Record<string, number>> {
  const counts = new Map<string, [asked: number, all: number]>();
  for (const plant of plants) {
    plant.log.forEach((reading, index) => {
      if (index < 2) return;
      const before = plant.log.slice(0, index);
      for (const [name, measured] of slipsOf(plant, reading, model)) {
        const count = counts.get(name) ?? [0, 0];
        count[1] += 1;
        if (asks(plant, before, { day: reading.day, measured })) count[0] += 1;
        counts.set(name, count);
      }
    });
  }
  return Object.fromEntries([...counts].map(([name, [asked, all]]) => [name, (100 * asked) / all]));
}

/** How often the honest reading after a slip that was left standing is asked about, in percent. */
export function askedAgainNextTime(
  plants: readonly SimulatedPlant[],
  asks: Asks,
  model: PlantModel,
): number {
  let [all, again] = [0, 0];
  for (const plant of plants) {
    for (let index = 2; index + 1 < plant.log.length; index += 1) {
      const [before, reading] = [plant.log.slice(0, index), plant.log[index]!];
      for (const [, measured] of slipsOf(plant, reading, model)) {
        const slip = { ...reading, measured };
        if (!asks(plant, before, slip)) continue;
        all += 1;
        if (asks(plant, [...before, slip], plant.log[index + 1]!)) again += 1;
      }
    }
  }
  return (100 * again) / all;
}

function slipsOf(
  { potCm }: SimulatedPlant,
  { trueCm, measured }: SimulatedReading,
  model: PlantModel,
): readonly (readonly [string, Measured])[] {
  const { unit, mark } = model;
  const height = trueCm < 6 ? 'below 6 cm' : trueCm <= 12 ? '6 to 12 cm' : 'above 12 cm';
  const turned = digitsTurned(measured);
  const ifTiny = trueCm < 6 ? 'below 6 cm' : 'later';
  const otherSide = unit === 'in' ? trueCm * 2.54 : trueCm / 2.54;
  return [
    [`other side read, ${height}`, readTo(otherSide, model)],
    ['ten times too long', ofExact(measured.exact * 10, unit, mark)],
    [`pot counted, ${height}`, readTo(measured.exact / 1e7 + potCm, model)],
    [`0 for a missed day, ${ifTiny}`, ofExact(0, unit, mark)],
    ['counted from 1', ofExact(measured.exact + exactPerUnit(unit), unit, mark)],
    ...(turned ? [['digits swapped', turned] as const] : []),
  ];
}
