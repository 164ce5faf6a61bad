import { describe, expect, test } from 'vitest';
import {
  formatExact,
  formatExactNumber,
  formatMeasured,
  formatMeasuredNumber,
  marksFor,
  parseMeasured,
  type HowToParse,
} from '#core/measure';

const read = (text: string, how: HowToParse) => {
  const result = parseMeasured(text, how);
  if (!result.ok) throw new Error(`${text}: ${result.error.kind}`);
  return Object.freeze(result.value);
};

describe('a reading is written back in its own mark', () => {
  test.each([
    ['4 1/2', { unit: 'in' }, '4 1/2 in', '4 1/2'],
    ['4.5', { unit: 'in', mark: '1/2 in' }, '4 1/2 in', '4 1/2'],
    ['4 1/2', { unit: 'in', mark: '0.1 in' }, '4.5 in', '4.5'],
    ['4 2/4', { unit: 'in', mark: '1/4 in' }, '4 1/2 in', '4 1/2'],
    ['4 8/16', { unit: 'in', mark: '1/16 in' }, '4 1/2 in', '4 1/2'],
    ['1/2', { unit: 'in' }, '1/2 in', '1/2'],
    ['0', { unit: 'in', mark: '1/8 in' }, '0 in', '0'],
    ['4', { unit: 'in', mark: '1/4 in' }, '4 in', '4'],
    ['0.05', { unit: 'in', mark: '0.01 in' }, '0.05 in', '0.05'],
    ['12', { unit: 'cm' }, '12 cm', '12'],
    ['12', { unit: 'cm', mark: '1 mm' }, '12 cm', '12'],
    ['12.5', { unit: 'cm' }, '12.5 cm', '12.5'],
    ['12 1/2 cm', { unit: 'cm' }, '12.5 cm', '12.5'],
    ['12.34', { unit: 'cm' }, '12.34 cm', '12.34'],
    ['0.1', { unit: 'mm' }, '0.1 mm', '0.1'],
    ['1 m 5 cm', { unit: 'cm' }, '1.05 m', '1.05'],
    ['1 ft 3 in', { unit: 'in' }, '1 ft 3 in', '1 ft 3 in'],
    [`1' 3 1/4"`, { unit: 'in' }, '1 ft 3 1/4 in', '1 ft 3 1/4 in'],
    ['2 ft', { unit: 'in', mark: '1 in' }, '2 ft', '2'],
    ['0 ft 3 in', { unit: 'in' }, '0 ft 3 in', '0 ft 3 in'],
    ['1 yd 6 in', { unit: 'in' }, '1 yd 6 in', '1 yd 6 in'],
    ['2 yd 1 ft 3 in', { unit: 'in' }, '2 yd 1 ft 3 in', '2 yd 1 ft 3 in'],
    ['7', { unit: 'count' }, '7', '7'],
  ] as const)('%s read as %o is %s', (text, how, whole, number) => {
    expect(formatMeasured(read(text, how))).toBe(whole);
    expect(formatMeasuredNumber(read(text, how))).toBe(number);
  });

  test('every sixteenth of an inch is in lowest terms', () => {
    const written = Array.from({ length: 16 }, (_, sixteenths) =>
      formatExactNumber(sixteenths * 1_587_500, 'in', '1/16 in'),
    );
    // Source: the parts of an inch as a ruler in sixteenths names them (units.json, 0 to 15/16).
    const named = '0 1/16 1/8 3/16 1/4 5/16 3/8 7/16 1/2 9/16 5/8 11/16 3/4 13/16 7/8 15/16';
    expect(written.join(' ')).toBe(named);
  });

  test('a decimal comma is written where commas are used', () => {
    expect(formatMeasured(read('12.5', { unit: 'cm' }), { decimal: 'comma' })).toBe('12,5 cm');
    expect(formatExact(12_954_000, 'in', '0.01 in', { decimal: 'comma' })).toBe('0,51 in');
  });

  test('noughts at the end are written when a column is to line up', () => {
    const keep = { trailingZeros: 'keep' } as const;
    expect(formatExact(120_000_000, 'cm', '1 mm', keep)).toBe('12.0 cm');
    expect(formatExact(12_700_000, 'in', '0.01 in', keep)).toBe('0.50 in');
    expect(formatExact(120_000_000, 'cm', '1 cm', keep)).toBe('12 cm');
    expect(formatExact(101_600_000, 'in', '1/2 in', keep)).toBe('4 in');
  });
});

describe('a computed value', () => {
  test('is taken to the mark first, an exact half going up', () => {
    expect(formatExact(12_499_999, 'cm', '1 cm')).toBe('1 cm');
    expect(formatExact(15_000_000, 'cm', '1 cm')).toBe('2 cm');
    // Source: 83 mm is nearest to 3 1/4 in (ruler.json accept).
    expect(formatExact(83_000_000, 'in', '1/4 in')).toBe('3 1/4 in');
  });

  test('below zero has a minus sign before all of it', () => {
    expect(formatExact(-114_300_000, 'in', '1/2 in')).toBe('\u22124 1/2 in');
    expect(formatExact(-381_000_000, 'ft', '1 in')).toBe('\u22121 ft 3 in');
    expect(formatExactNumber(-5_000_000, 'cm', '1 mm')).toBe('\u22120.5');
    expect(formatExactNumber(-3, 'count', '1')).toBe('\u22123');
  });

  test('that rounds to nothing has no sign', () => {
    expect(formatExact(-1_000_000, 'cm', '1 cm')).toBe('0 cm');
    expect(formatExact(-0, 'cm', '1 cm')).toBe('0 cm');
  });

  test('may be written in another unit of its mark’s system', () => {
    expect(formatExact(120_000_000, 'mm', '1 cm')).toBe('120 mm');
    expect(formatExact(120_000_000, 'm', '1 mm')).toBe('0.12 m');
    expect(formatExact(914_400_000, 'in', '1 ft')).toBe('36 in');
  });

  test('cannot be read to a mark of another system: that is our own mistake', () => {
    expect(() => formatExact(1, 'cm', '1/2 in')).toThrow('cm');
    expect(() => formatExact(1, 'count', '1 cm')).toThrow('count');
    expect(() => formatExact(NaN, 'cm', '1 cm')).toThrow(RangeError);
  });

  test('of a thousand metres is still written in plain digits', () => {
    for (const mark of marksFor('mm')) {
      expect(formatExact(1_000_000_000_000, 'mm', mark.id)).toBe('1000000 mm');
    }
  });
});
