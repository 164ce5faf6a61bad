import { describe, expect, it } from 'vitest';
import type { Quantity, Reading } from '#core/journal';
import { dayAmount, type Series } from '#core/series';
import { read } from '../journal/entries';

const logOf = (quantity: Quantity) => ({ investigation: { quantity } }) as Series;
const readings = (...values: number[]) => ({
  readings: values.map((value) => ({ counted: read(value) }) as Reading),
});

describe('the one amount of a day', () => {
  it('is the middle reading where a thing was read several times', () => {
    expect(dayAmount(logOf('plant-height'), readings(9, 7, 8))?.text).toBe('8');
  });

  it('is the sum of rain, because the gauge is emptied at each reading', () => {
    const day = dayAmount(logOf('rain'), readings(2, 3));
    expect([day?.text, day?.exact]).toEqual(['5', 50_000_000]);
  });

  it('is nothing on a day without a number', () => {
    expect(dayAmount(logOf('rain'), readings())).toBeNull();
  });
});
