import { civilDay } from '#core/calendar';
import type { Quantity } from '#core/journal';
import type { Measured } from '#core/measure';
import type { Doubt, SeriesPoint } from '#core/series';
import { anId, bean, read } from '../../core/journal/entries';

interface DoubtSample {
  readonly doubt: Doubt;
  readonly measured: Measured;
  readonly quantity: Quantity;
}

const day = civilDay('2026-03-10');
const point: SeriesPoint = {
  ...{ day, exact: 120_000_000, unit: 'cm', mark: '1 cm', spanDays: 1, reading: anId(10) },
};
const perhapsExact = 120_000_000;
const plant = (doubt: Doubt, measured = read(30)): DoubtSample => ({
  ...{ doubt, measured, quantity: 'plant-height' },
});
const rain = (doubt: Doubt, measured = read(12, 'in', '1 in')): DoubtSample => ({
  ...{ doubt, measured, quantity: 'rain' },
});
const shadow = (doubt: Doubt, measured = read(80)): DoubtSample => ({
  ...{ doubt, measured, quantity: 'shadow' },
});

/** One of every doubt there is, as a child may meet it. */
export const doubtSamples: readonly DoubtSample[] = [
  plant({ kind: 'zero-or-missed', last: point }, read(0)),
  plant({ kind: 'other-side', chosen: 'cm', perhapsUnit: 'in', perhapsExact }, read(5)),
  plant({ kind: 'ten-times-too-long', perhapsUnit: 'mm', perhapsExact }, read(124)),
  plant({ kind: 'ten-times-too-long', perhapsUnit: null, perhapsExact }, read(50, 'in', '1 in')),
  plant({ kind: 'ten-times-too-short', perhapsUnit: 'cm', perhapsExact }, read(12, 'mm', '1 mm')),
  plant({ kind: 'ten-times-too-short', perhapsUnit: null, perhapsExact }, read(1)),
  plant({ kind: 'digits-swapped', perhapsText: '12', perhapsExact }, read(21)),
  plant({ kind: 'stand-counted', stand: read(10), perhapsExact }),
  plant({ kind: 'ruler-upside-down', rulerExact: 300_000_000, perhapsExact }, read(18)),
  plant({ kind: 'other-plant', specimen: bean, name: 'Bean B', itsLast: point }),
  plant({
    ...{ kind: 'same-number-again', days: 4, since: day, growthPerDayBeforeExact: 20_000_000 },
  }),
  plant({ kind: 'shrank', last: point, lessExact: 20_000_000 }, read(9)),
  plant({ kind: 'big-jump', last: point, moreExact: 90_000_000, gapDays: 1 }),
  plant({ kind: 'past-the-cap', capExact: 1_000_000_000 }, read(120)),
  rain({ kind: 'rain-unit', perhapsUnit: 'mm', perhapsExact }),
  rain({ kind: 'rain-as-before', before: point }),
  rain({ kind: 'rain-though-dry', weather: 'sun' }),
  rain({ kind: 'past-the-cap', capExact: 100_000_000 }),
  shadow({ kind: 'shadow-zero' }, read(0)),
  shadow({ kind: 'midday-longer', morning: point }),
  shadow({ kind: 'shadow-not-as-before', before: point, shareOff: 0.2 }),
  shadow({ kind: 'past-the-cap', capExact: 100_000_000 }),
];
