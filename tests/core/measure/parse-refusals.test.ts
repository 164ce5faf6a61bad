import { describe, expect, test } from 'vitest';
import { parseMeasured, type HowToParse, type ParseErrorKind } from '#core/measure';

/** Text, kind, position, what stands there, and the readings offered. */
type Row = readonly [string, ParseErrorKind, number, string, readonly string[]];

const refusals = (title: string, how: HowToParse, rows: readonly Row[]): void => {
  describe(title, () => {
    test.each(rows)('%j is %s at %d, %j, with the choices %j', (text, kind, at, read, choices) => {
      const result = parseMeasured(text, how);
      if (result.ok) throw new Error(`It was read as ${result.value.exact}`);
      const { error } = result;
      expect([error.kind, error.position, error.read]).toEqual([kind, at, read]);
      expect(error.choices?.map((choice) => choice.text)).toEqual(choices);
    });
  });
};

refusals('inches that could be two things, or none', { unit: 'in' }, [
  [
    '4 1',
    'ambiguous',
    2,
    '1',
    ['4 1/2 in', '4 1/4 in', '4 1/8 in', '4 1/16 in', '41 in', '4.1 in'],
  ],
  ['4 12', 'ambiguous', 2, '12', ['4 1/2 in', '412 in', '4.12 in']],
  ['4 34', 'ambiguous', 2, '34', ['4 3/4 in', '434 in', '4.34 in']],
  ['1 234', 'ambiguous', 2, '234', ['1234 in']],
  ['41/2', 'ambiguous', 0, '41/2', ['4 1/2 in', '20 1/2 in']],
  ['12/4', 'ambiguous', 0, '12/4', ['1 1/2 in', '3 in']],
  ['4-5 in', 'ambiguous', 1, '-', ['4 in', '5 in']],
  ['4 – 5', 'ambiguous', 2, '–', ['4 in', '5 in']],
  ['4 - 1/2', 'ambiguous', 2, '-', ['4 1/2 in']],
  ["5' 3", 'ambiguous', 3, '3', ['5 ft 3 in']],
  ['5 ft 3/4', 'ambiguous', 5, '3/4', ['5 ft 3/4 in']],
  ['1,234', 'ambiguous', 0, '1,234', ['1234 in']],
  ['1,234.5', 'ambiguous', 0, '1,234.5', ['1234.5 in']],
  ['12,5', 'ambiguous', 0, '12,5', ['12.5 in']],
  ['4/', 'bad-fraction', 2, '', ['1/2 in', '1/4 in']],
  ['4 1/', 'bad-fraction', 4, '', ['4 1/2 in', '4 1/4 in', '4 1/8 in', '4 1/16 in']],
  ['3/ in', 'bad-fraction', 3, 'in', ['3/4 in', '3/8 in', '3/16 in']],
  ['1/0', 'bad-fraction', 2, '0', []],
  ['4 1/00', 'bad-fraction', 4, '00', []],
  ['1 5/4', 'bad-fraction', 2, '5/4', ['2 1/4 in']],
  ['3 4/4', 'bad-fraction', 2, '4/4', ['4 in']],
  ['4.5 1/2', 'bad-fraction', 4, '1/2', []],
  ['1/2/3', 'bad-fraction', 3, '/', []],
  ['1.5/2', 'bad-fraction', 3, '/', []],
  ['1/2.5', 'bad-fraction', 3, '.', []],
  ['1½/2', 'bad-fraction', 2, '/', []],
  ['1/3 in', 'off-every-mark', 0, '1/3 in', ['5/16 in', '3/8 in']],
  ['4⅓', 'off-every-mark', 0, '4⅓', ['4 5/16 in', '4 3/8 in']],
  ['1/32', 'off-every-mark', 0, '1/32', ['0 in', '1/16 in']],
  ['4.125', 'off-every-mark', 0, '4.125', ['4 1/8 in']],
  ['4.333', 'off-every-mark', 0, '4.333', ['4.33 in', '4.34 in']],
  ['3 in 2 cm', 'unit-mismatch', 7, 'cm', []],
  ['3 in 2 in', 'unit-mismatch', 7, 'in', []],
  ['3 in 2 ft', 'unit-mismatch', 7, 'ft', ['2 ft 3 in']],
  ['1 ft 15 in', 'bad-part', 5, '15', ['2 ft 3 in']],
  ['1.5 ft 3 in', 'bad-part', 0, '1.5', []],
  ['1 1/2 ft 3 in', 'bad-part', 0, '1 1/2', []],
  ['12 com', 'unknown-unit', 3, 'com', []],
  ['12 inc', 'unknown-unit', 3, 'inc', ['12 in']],
  ['2 km', 'unknown-unit', 2, 'km', []],
  ['1O', 'unknown-unit', 1, 'O', []],
  ['5 лет', 'unknown-unit', 2, 'лет', []],
]);

refusals('centimetres that lie between the marks', { unit: 'cm', mark: '1 mm' }, [
  ['12.345', 'off-every-mark', 0, '12.345', ['12.3 cm', '12.4 cm']],
  ['0.001', 'off-every-mark', 0, '0.001', ['0 cm', '0.1 cm']],
  ['4 1', 'ambiguous', 2, '1', ['41 cm', '4.1 cm']],
]);

refusals('points where commas are used', { unit: 'cm', decimal: 'comma' }, [
  ['1.234', 'ambiguous', 0, '1.234', ['1234 cm']],
  ['1.23', 'ambiguous', 0, '1.23', ['1,23 cm']],
  ['12.5', 'ambiguous', 0, '12.5', ['12,5 cm']],
  ['.5', 'ambiguous', 0, '.5', ['0,5 cm']],
  ['1.234,5', 'ambiguous', 0, '1.234,5', ['1234,5 cm']],
]);

refusals('counts', { unit: 'count' }, [
  ['7.5', 'off-every-mark', 0, '7.5', ['7', '8']],
  ['1/2', 'off-every-mark', 0, '1/2', ['0', '1']],
  ['7 in', 'unit-mismatch', 2, 'in', ['7']],
  ['7 seeds', 'unknown-unit', 2, 'seeds', ['7']],
  ['1,000', 'ambiguous', 0, '1,000', ['1', '1000']],
  ['-1', 'negative', 0, '-', ['1']],
]);

refusals('text that is no reading', { unit: 'in' }, [
  ['', 'empty', 0, '', []],
  ['  \t \n ', 'empty', 0, '', []],
  ['x'.repeat(10_000), 'too-long', 0, 'x'.repeat(24), []],
  ['9'.repeat(10_000), 'too-long', 0, '9'.repeat(24), []],
  ['😀'.repeat(5_000), 'too-long', 0, '😀'.repeat(24), []],
  ['-3', 'negative', 0, '-', ['3 in']],
  ['\u22123 in', 'negative', 0, '\u2212', ['3 in']],
  ['–½', 'negative', 0, '–', ['1/2 in']],
  ['-', 'not-a-number', 0, '-', []],
  ['--3', 'not-a-number', 0, '-', []],
  ['-Infinity', 'not-a-number', 0, '-', []],
  ['Infinity', 'not-a-number', 0, 'Infinity', []],
  ['NaN', 'not-a-number', 0, 'NaN', []],
  ['null', 'not-a-number', 0, 'null', []],
  ['twelve', 'not-a-number', 0, 'twelve', []],
  ['in', 'not-a-number', 0, 'in', []],
  ['"', 'not-a-number', 0, '"', []],
  ['/', 'not-a-number', 0, '/', []],
  ['/2', 'not-a-number', 0, '/', []],
  ['.', 'not-a-number', 0, '.', []],
  ['1e3', 'not-a-number', 1, 'e', []],
  ['0x10', 'not-a-number', 1, 'x', []],
  ['12.', 'not-a-number', 3, '', ['12 in']],
  ['12,', 'not-a-number', 3, '', ['12 in']],
  ['1.2.3', 'not-a-number', 0, '1.2.3', []],
  ['1,2,3', 'not-a-number', 0, '1,2,3', []],
  ['+3', 'not-a-number', 0, '+', []],
  ['~4', 'not-a-number', 0, '~', []],
  ['4?', 'not-a-number', 1, '?', []],
  ['4 in in', 'not-a-number', 5, 'in', []],
  ['4 in²', 'not-a-number', 4, '²', []],
  ['½4', 'not-a-number', 1, '4', []],
  ['4½½', 'not-a-number', 2, '½', []],
  ['1/2 1/2', 'not-a-number', 4, '1', []],
  ['6-inch', 'not-a-number', 1, '-', []],
  ['4\n1/2', 'not-a-number', 1, '\n', []],
  ['😀', 'not-a-number', 0, '😀', []],
  ['4 😀', 'not-a-number', 2, '😀', []],
  ['4\ud83d', 'not-a-number', 1, '\ud83d', []],
  ['<b>4</b>', 'not-a-number', 0, '<', []],
  ['4<script>', 'not-a-number', 1, '<', []],
  ['=1+1', 'not-a-number', 0, '=', []],
  ["4'; drop", 'not-a-number', 2, ';', []],
  ['\u200f4', 'not-a-number', 0, '\u200f', []],
  ['4\u202e1/2', 'not-a-number', 1, '\u202e', []],
  ['4\u0000', 'not-a-number', 1, '\u0000', []],
  ['4\u200b1', 'not-a-number', 1, '\u200b', []],
  ['४', 'not-a-number', 0, '४', []],
  ['①', 'not-a-number', 0, '①', []],
  ['__proto__', 'not-a-number', 0, '_', []],
  ['4 constructor', 'unknown-unit', 2, 'constructor', []],
  ['4 toString', 'unknown-unit', 2, 'toString', []],
]);

describe('an error says what would have fitted', () => {
  test.each([
    ['', 'number'],
    ['twelve', 'number'],
    ['12.', 'number'],
    ['4 1/', 'denominator'],
    ['1/0', 'denominator'],
    ['12 com', 'unit'],
    ['5 ft 3', 'unit'],
    ['4 in x', 'nothing-more'],
  ] as const)('%j wants: %s', (text, expected) => {
    expect(parseMeasured(text, { unit: 'in' })).toMatchObject({ error: { expected } });
  });

  test('counts the position in the text as it was given, blanks and all', () => {
    expect(parseMeasured('   4 1/0', { unit: 'in' })).toMatchObject({ error: { position: 7 } });
  });
});
