import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Unit } from '#core/measure';
import { exactOfDecimal, plainDecimal } from '../../../src/lib/core/exchange/plain-decimal';

// Inches in centimetres: 1 in = 2.54 cm exactly (24 FR 5348, 1 July 1959); the rest by hand.
test.each<[number, Unit, string]>([
  [0, 'cm', '0'],
  [1, 'cm', '0.0000001'],
  [1_587_500, 'cm', '0.15875'],
  [1_587_500, 'in', '0.0625'],
  [25_400_000, 'cm', '2.54'],
  [114_300_000, 'in', '4.5'],
  [101_600_000, 'ft', '0.333333'],
  [203_200_000, 'ft', '0.666667'],
  [304_799_999, 'ft', '1'],
  [10_000_000, 'in', '0.393701'],
  [12_345, 'count', '12345'],
])('X12 %i in %s is written %s', (exact, unit, written) => {
  expect(plainDecimal(exact, unit)).toBe(written);
});

test('X13 centimetres are exact to the nanometre, out and in', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1_000_000_000_000 }), (exact) => {
      expect(exactOfDecimal(plainDecimal(exact, 'cm'), 'cm')).toBe(exact);
    }),
    { seed: 71, numRuns: 2000 },
  );
});

test.each(['', '-1', '1,5', '1e3', '1.', '.5', '0.00000001', 'x'])(
  'X13 %j is no plain decimal of centimetres',
  (text) => {
    expect(exactOfDecimal(text, 'cm')).toBe(null);
  },
);

test('X13 a count is whole', () => {
  expect(exactOfDecimal('7', 'count')).toBe(7);
  expect(exactOfDecimal('7.0', 'count')).toBe(7);
  expect(exactOfDecimal('7.5', 'count')).toBe(null);
});
