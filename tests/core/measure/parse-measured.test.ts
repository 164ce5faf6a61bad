import { describe, expect, test } from 'vitest';
import { parseMeasured, type HowToParse, type Measured } from '#core/measure';

const inches = { unit: 'in' } as const;
const centimetres = { unit: 'cm' } as const;
const halfInch = 12_700_000;

/** Text, how it is read, and the unit, mark and exact nanometres that it means. */
type Row = readonly [string, HowToParse, Omit<Measured, 'text'>];

const means = (unit: Measured['unit'], mark: Measured['mark'], exact: number) => ({
  unit,
  mark,
  exact,
});

describe('what people write is read', () => {
  const fourAndAHalf = means('in', '1/2 in', 9 * halfInch);
  const footThree = means('ft', '1 in', 15 * 2 * halfInch);
  const footThreeQuarter = means('ft', '1/4 in', 387_350_000);

  const rows: readonly Row[] = [
    ['12', centimetres, means('cm', '1 cm', 120_000_000)],
    ['12 cm', centimetres, means('cm', '1 cm', 120_000_000)],
    ['12cm', centimetres, means('cm', '1 cm', 120_000_000)],
    ['  12  ', centimetres, means('cm', '1 cm', 120_000_000)],
    ['012', centimetres, means('cm', '1 cm', 120_000_000)],
    ['12.5cm', centimetres, means('cm', '0.5 cm', 125_000_000)],
    ['12.50 cm', centimetres, means('cm', '0.5 cm', 125_000_000)],
    ['12.500000 cm', centimetres, means('cm', '0.5 cm', 125_000_000)],
    ['12.3', centimetres, means('cm', '1 mm', 123_000_000)],
    ['12.34', centimetres, means('cm', '0.1 mm', 123_400_000)],
    ['0.1 mm', centimetres, means('mm', '0.1 mm', 100_000)],
    ['12 1/2 cm', centimetres, means('cm', '0.5 cm', 125_000_000)],
    ['0', centimetres, means('cm', '1 cm', 0)],
    ['0', { unit: 'count' }, means('count', '1', 0)],
    ['7', { unit: 'count' }, means('count', '1', 7)],
    ['.5', centimetres, means('cm', '0.5 cm', 5_000_000)],
    // Fractions of an inch
    ['4', inches, means('in', '1 in', 8 * halfInch)],
    ['4 1/2', inches, fourAndAHalf],
    ['4½ in', inches, fourAndAHalf],
    ['4 ½', inches, fourAndAHalf],
    ['4-1/2"', inches, fourAndAHalf],
    ['4-½', inches, fourAndAHalf],
    ['4 1/2"', inches, fourAndAHalf],
    ['4 1⁄2', inches, fourAndAHalf],
    ['4 1 / 2', inches, fourAndAHalf],
    ['4\u00a01/2\u00a0in', inches, fourAndAHalf],
    ['4 2/4 in', inches, fourAndAHalf],
    ['4 and 1/2 inches', inches, fourAndAHalf],
    ['9/2', inches, fourAndAHalf],
    ['½', inches, means('in', '1/2 in', halfInch)],
    ['1/2', inches, means('in', '1/2 in', halfInch)],
    ['5/4', inches, means('in', '1/4 in', 31_750_000)],
    ['10/4', inches, means('in', '1/2 in', 63_500_000)],
    ['0/4', inches, means('in', '1 in', 0)],
    ['15/16', inches, means('in', '1/16 in', 23_812_500)],
    ['3⅞ in', inches, means('in', '1/8 in', 98_425_000)],
    ['4.5', inches, means('in', '0.1 in', 9 * halfInch)],
    ['4.25', inches, means('in', '0.01 in', 107_950_000)],
    ['4.0', inches, means('in', '1 in', 8 * halfInch)],
    // Feet and inches
    ['1 ft 3 in', inches, footThree],
    ['1ft3in', inches, footThree],
    ['1 ft, 3 in', inches, footThree],
    ['1 foot and 3 inches', inches, footThree],
    [`1'3"`, inches, footThree],
    [`1'-3"`, inches, footThree],
    ['1’ - 3”', inches, footThree],
    ["1' 3''", inches, footThree],
    [`1' 3 1/4"`, inches, footThreeQuarter],
    ['1′ 3 1/4″', inches, footThreeQuarter],
    ['1 ft 3¼ in', centimetres, footThreeQuarter],
    ['1.5 ft', inches, means('ft', '1 in', 457_200_000)],
    // Source: units.json ft_yd: 4 1/2 ft is 137.16 cm.
    ['4 1/2 ft', inches, means('ft', '1 in', 1_371_600_000)],
    ['2 yd 1 ft 3 in', inches, means('yd', '1 in', 2_209_800_000)],
    ['1 m 25 cm', inches, means('m', '1 cm', 1_250_000_000)],
    ['12 m', centimetres, means('m', '1 m', 12_000_000_000)],
    ['1.2 m', centimetres, means('m', '0.1 m', 1_200_000_000)],
    // Other digits
    ['٣', centimetres, means('cm', '1 cm', 30_000_000)],
    ['۱۲', centimetres, means('cm', '1 cm', 120_000_000)],
    ['１２．５', centimetres, means('cm', '0.5 cm', 125_000_000)],
  ];
  test.each(rows)('%s read as %o', (text, how, expected) => {
    expect(parseMeasured(text, Object.freeze(how))).toEqual({
      ok: true,
      value: { ...expected, text: text.trim() },
    });
  });

  test.each([
    ['in', ['in', 'in.', 'In', 'IN', 'ins', 'inch', 'inches', 'Inches', '"', '″', '”', '“', "''"]],
    ['ft', ['ft', 'ft.', 'FT', 'foot', 'feet', "'", '′', '’', '‘']],
    ['yd', ['yd', 'yd.', 'yds', 'yard', 'yards']],
    ['mm', ['mm', 'MM', 'millimetre', 'millimetres', 'millimeter', 'millimeters', '㎜']],
    ['cm', ['cm', 'cm.', 'Cm', 'cms', 'centimetre', 'centimetres', 'centimeters', '㎝']],
    ['m', ['m', 'm.', 'M', 'metre', 'metres', 'meter', 'meters']],
  ] as const)('%s may be written %j', (unit, words) => {
    for (const word of words) {
      const chosen = unit === 'in' ? centimetres : inches;
      expect([word, parseMeasured(`3 ${word}`, chosen)]).toMatchObject([word, { value: { unit } }]);
    }
  });
});

describe('a decimal comma, where commas are used', () => {
  const comma = { unit: 'cm', decimal: 'comma' } as const;
  test.each([
    ['12,5', 125_000_000],
    [',5', 5_000_000],
    ['12', 120_000_000],
    ['12,50 cm', 125_000_000],
  ])('%s', (text, exact) => {
    expect(parseMeasured(text, comma)).toMatchObject({ ok: true, value: { exact, text } });
  });
});

describe('the mark it was read to', () => {
  test.each([
    ['4', { unit: 'in', mark: '1/4 in' }, '1/4 in'],
    ['4.5', { unit: 'in', mark: '1/4 in' }, '1/4 in'],
    ['12', { unit: 'cm', mark: '1 mm' }, '1 mm'],
    ['12', { unit: 'cm', mark: '0.5 cm' }, '0.5 cm'],
    ['1 ft 3 in', { unit: 'in', mark: '1/2 in' }, '1/2 in'],
    ['4.125', { unit: 'in', mark: '1/8 in' }, '1/8 in'],
  ] as const)('%s stays with the wanted one, %o', (text, how, mark) => {
    expect(parseMeasured(text, how)).toMatchObject({ ok: true, value: { mark } });
  });

  test.each([
    ['4 1/8', { unit: 'in', mark: '1/4 in' }, '1/8 in'],
    ['12.3', { unit: 'cm', mark: '1 cm' }, '1 mm'],
    ['12 cm', { unit: 'in', mark: '1/2 in' }, '1 cm'],
    ['120 mm', { unit: 'cm', mark: '1 cm' }, '1 mm'],
    ['4 in', { unit: 'cm', mark: '1 mm' }, '1 in'],
  ] as const)('%s is finer, or of another unit, than %o: it gets %s', (text, how, mark) => {
    expect(parseMeasured(text, how)).toMatchObject({ ok: true, value: { mark } });
  });
});

describe('the largest reading', () => {
  test('is a kilometre, or a million things', () => {
    expect(parseMeasured('1000 m', centimetres).ok).toBe(true);
    expect(parseMeasured('1000000', { unit: 'count' }).ok).toBe(true);
    for (const [text, how] of [
      ['1000.001 m', centimetres],
      ['100000.1', centimetres],
      ['1000001', { unit: 'count' }],
      ['9'.repeat(60), inches],
    ] as const) {
      expect(parseMeasured(text, how)).toMatchObject({ error: { kind: 'too-big', position: 0 } });
    }
  });
});
