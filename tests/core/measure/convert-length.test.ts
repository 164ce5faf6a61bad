import configureMeasurements from 'convert-units';
import stockLength from 'convert-units/definitions/length';
import { all, create } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { convertLength, toUnit, unitCatalogue, type LengthUnit } from '#core/measure';
import units from '../../reference/units.json';
import { asDouble, unitRows } from './reference-values';

const exactMath = create(all ?? {}, { number: 'BigNumber', precision: 64 });

/** mathjs with 64 digits: its own unit table (1 in = 0.0254 m), rounded once at the very end. */
const byMathjs = (value: string, from: LengthUnit, to: LengthUnit): number =>
  Number(exactMath.unit(exactMath.bignumber(value), from).toNumeric(to).toString());

const stock = configureMeasurements({ length: stockLength });

describe('converting a length', () => {
  // Source: units.json, exact factor 25.4 mm/in, rational arithmetic; NIST SP 811 (2008) App. B.8.
  test.each(unitRows)('$value $from is the nearest double to $exact_fraction $to', (row) => {
    expect(convertLength(asDouble(row.value), row.from, row.to)).toBe(row.double);
  });

  // Source: units.json double_traps: products of doubles that miss the decimal they stand for.
  test.each([
    [3, 76.2, 3 * 25.4],
    [6, 152.4, 6 * 25.4],
    [7, 177.8, 7 * 25.4],
    [12, 304.8, 12 * 25.4],
    [8.2, 208.28, 8.2 * 25.4],
    [0.17, 4.318, 0.17 * 25.4],
  ])('%d in is %d mm, where multiplying doubles gives %d', (inches, mm, naive) => {
    expect(convertLength(inches, 'in', 'mm')).toBe(mm);
    expect(naive).not.toBe(mm);
  });

  test('agrees to the last bit with mathjs for every sixteenth of an inch up to 100 in', () => {
    for (let sixteenths = 0; sixteenths <= 1600; sixteenths += 1) {
      const inches = sixteenths / 16;
      expect(convertLength(inches, 'in', 'cm')).toBe(byMathjs(String(inches), 'in', 'cm'));
    }
  });

  test('agrees to the last bit with mathjs for every millimetre and every 0.1 mm of rain', () => {
    for (let count = 0; count <= 1000; count += 1) {
      const tenths = `${Math.floor(count / 10)}.${count % 10}`;
      expect(convertLength(count, 'mm', 'in')).toBe(byMathjs(String(count), 'mm', 'in'));
      expect(convertLength(Number(tenths), 'mm', 'in')).toBe(byMathjs(tenths, 'mm', 'in'));
      expect(convertLength(Number(tenths), 'cm', 'ft')).toBe(byMathjs(tenths, 'cm', 'ft'));
    }
  });

  test('leaves a value that is no whole number of nanometres as near as doubles come', () => {
    // A third of an inch is 8466666.67 nm: not to be pulled to a whole one.
    const centimetres = convertLength(1 / 3, 'in', 'cm');
    expect(Math.abs(centimetres - 2.54 / 3)).toBeLessThan(2e-16);
  });

  test('gives the chart the same number as the exact value does', () => {
    expect(convertLength(7.75, 'in', 'cm')).toBe(toUnit(196_850_000, 'cm'));
  });

  test('refuses to convert what is not a number', () => {
    for (const value of [NaN, Infinity, -Infinity]) {
      expect(() => convertLength(value, 'in', 'cm')).toThrow(RangeError);
    }
  });
});

describe('why the library does not use its own lengths here', () => {
  const toOneDecimal = (centimetres: number): number => Math.round(centimetres * 10) / 10;

  test('stock 2.5 in rounds to 6.3 cm, ours to 6.4 (exact 6.35, half goes up)', () => {
    expect(toOneDecimal(stock(2.5).from('in').to('cm'))).toBe(6.3);
    expect(toOneDecimal(convertLength(2.5, 'in', 'cm'))).toBe(6.4);
  });

  test('stock 100 in holds 253 whole centimetres, ours 254', () => {
    expect(Math.floor(stock(100).from('in').to('cm'))).toBe(253);
    expect(Math.floor(convertLength(100, 'in', 'cm'))).toBe(254);
  });

  // Source: units.json library_probe, whose `exact` column is rational arithmetic.
  const ours = unitCatalogue().map(({ unit }) => unit as string);
  const between = units['library_probe'].rows
    .map((row) => ({ ...row, parts: row.conv.match(/^([\d.]+) (\w+)->(\w+)$/)?.slice(1) ?? [] }))
    .filter(({ parts: [, from, to] }) => ours.includes(from ?? '') && ours.includes(to ?? ''));

  test('the probe has rows to compare', () => {
    expect(between).toHaveLength(20);
  });

  test.each(between)('$conv is $exact, to the last bit', ({ parts, exact }) => {
    const [value = '', from, to] = parts;
    expect(convertLength(Number(value), from as LengthUnit, to as LengthUnit)).toBe(Number(exact));
  });

  test('the stock catalogue misses every probed step between inches and metres', () => {
    const metric = ['mm', 'cm', 'm'];
    const crossing = between.filter(
      ({ parts: [, from = '', to = ''] }) => metric.includes(from) !== metric.includes(to),
    );
    expect(crossing).toHaveLength(16);
    for (const { parts, exact } of crossing) {
      const [value = '', from = '', to = ''] = parts;
      const stockValue = stock(Number(value)).from(from).to(to);
      // Source: its relative error is 3.2e-8 (units.json library_probe).
      expect(Math.abs(stockValue / Number(exact) - 1)).toBeGreaterThan(3e-8);
    }
  });
});

describe('the catalogue of units', () => {
  test('names every unit of length in words, each once', () => {
    expect(unitCatalogue()).toEqual([
      { unit: 'mm', singular: 'millimetre', plural: 'millimetres', system: 'metric' },
      { unit: 'cm', singular: 'centimetre', plural: 'centimetres', system: 'metric' },
      { unit: 'm', singular: 'metre', plural: 'metres', system: 'metric' },
      { unit: 'in', singular: 'inch', plural: 'inches', system: 'customary' },
      { unit: 'ft', singular: 'foot', plural: 'feet', system: 'customary' },
      { unit: 'yd', singular: 'yard', plural: 'yards', system: 'customary' },
    ]);
  });

  test('is the factor table of NIST SP 811 (2008) App. B.8, in metres', () => {
    // Source: units.json factors: 25.4 mm, 0.3048 m and 0.9144 m exactly.
    expect(convertLength(1, 'in', 'mm')).toBe(25.4);
    expect(convertLength(1, 'ft', 'm')).toBe(0.3048);
    expect(convertLength(1, 'yd', 'm')).toBe(0.9144);
  });
});
