import { describe, expect, it } from 'vitest';
import { addDays, civilDay } from '#core/calendar';
import { exactPerUnit, type MarkId, type Unit } from '#core/measure';
import { doubtsAbout, type DoubtKind } from '#core/series';
import growth from '../../reference/growth.json';
import { smallLogs } from '../growth/log-points';
import { ofExact, seriesOfReadings } from './simulated-plants';

const unitByText: Readonly<Record<string, readonly [Unit, MarkId]>> = {
  cm: ['cm', '0.1 mm'],
  mm: ['mm', '0.1 mm'],
  'mm (trunk circumference)': ['mm', '0.1 mm'],
  ft: ['ft', '0.01 in'],
};

/** Days of a step: of the boys' standardised age no calendar is known, and a step stands for one. */
const daysByStep: Readonly<Record<string, number>> = {
  year: 365.25,
  'standardised age (dimensionless)': 365.25,
};

type Read = Parameters<typeof seriesOfReadings>[0][number];

const kindsOf = (log: readonly Read[]): readonly (readonly DoubtKind[])[] =>
  log.map((reading, index) =>
    doubtsAbout(reading, seriesOfReadings(log.slice(0, index)), []).map(({ kind }) => kind),
  );

// Source: tests/reference/growth.json, with the primary source of each series; weights left out.
const realLogs = growth.series.flatMap(({ label, x, y, x_unit, y_unit }) => {
  const [unit, mark] = unitByText[y_unit] ?? [];
  if (!unit || !mark) return [];
  const log = x.map((step, index): Read => {
    const since = Math.round(Number(step) * (daysByStep[x_unit] ?? 1));
    const exact = Math.round(Number(y[index]) * exactPerUnit(unit));
    return {
      day: addDays(civilDay('1968-12-31'), since),
      measured: ofExact(exact, unit, mark),
    };
  });
  return [{ label, log }];
});

describe('real growth, as if it had been logged', () => {
  it('is in thirteen series of lengths', () => {
    expect(realLogs.map(({ log }) => log.length)).toEqual([12, 7, 7, 7, 6, 6, 6, 6, 9, 9, 9, 4, 4]);
  });

  it.each(realLogs)('$label is not asked about', ({ label, log }) => {
    // Pines and boys are first read at more than 40 in or 100 cm: the cap of a pot's first month.
    const isTall = /pine|Oxboys/.test(label);
    const [first, ...others] = kindsOf(log);
    expect(first).toEqual(isTall ? ['past-the-cap'] : []);
    expect(others.flat()).toEqual([]);
  });

  // The sunflowers grew 5.5 cm a day at the fastest: the slips are found all the same.
  it('of the sunflowers, each fourth height as inches or ten times as long is asked about', () => {
    const { log } = realLogs[0]!;
    for (const index of [2, 5, 8, 11]) {
      const { day, measured } = log[index]!;
      const askedAt = (factor: number) =>
        doubtsAbout(
          { day, measured: { ...measured, exact: Math.round(measured.exact * factor) } },
          seriesOfReadings(log.slice(0, index)),
          [],
        ).map(({ kind }) => kind);
      expect(askedAt(1 / 2.54)).toContain('other-side');
      expect(askedAt(10)).not.toEqual([]);
    }
  });
});

// Source: tests/reference/logs.json, made for testing.
describe('the small logs', () => {
  const kindsIn = (name: string) => {
    const { points } = smallLogs.find((log) => log.name === name)!;
    const inOrder = [...points].sort((one, other) => (one.day < other.day ? -1 : 1));
    return kindsOf(
      inOrder.map(({ day, exact, unit, mark }) => ({ day, measured: ofExact(exact, unit, mark) })),
    ).flat();
  };

  it.each([
    'uneven gaps, inches',
    'mixed units on one exact line',
    'across a clock change',
    'leap day',
    'out of order entry',
    'same-day repeat',
    'flat',
    'one reading',
  ])('%s: nothing is asked', (name) => {
    expect(kindsIn(name)).toEqual([]);
  });

  it.each(['typo 10x on the middle day', 'typo 10x on the fourth day'])(
    '%s: the slip is asked about as millimetres, and nothing else is',
    (name) => {
      expect(kindsIn(name)).toContain('ten-times-too-long');
    },
  );
});
