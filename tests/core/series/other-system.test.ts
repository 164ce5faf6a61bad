import { expect, it } from 'vitest';
import { parseMeasured, type MarkId, type Unit } from '#core/measure';
import { inOtherSystem } from '#core/series';
import units from '../../reference/units.json';
import { read } from '../journal/entries';

const measured = (text: string, unit: Unit, mark?: MarkId) => {
  const parsed = parseMeasured(text, { unit, mark });
  if (!parsed.ok) throw new Error(parsed.error.kind);
  return Object.freeze(parsed.value);
};

// Source: NIST LC 1137, 36 in is 91 cm, as copied in tests/reference/units.json.
it('a reading in whole inches is said in whole centimetres', () => {
  const row = units.published_rounding.find((each) => each.in === '36 in');
  expect(inOtherSystem(measured('36', 'in', '1 in'))?.text).toBe(`about ${row?.reported}`);
});

it.each([
  // Worked by hand from 1 in = 25.4 mm: 4 1/2 in is 11.43 cm, read to a half inch.
  ['4 1/2', 'in', '1/2 in', 'about 11 cm'],
  // 12 cm is 4.72 in; a whole centimetre deserves no finer than the half inch.
  ['12', 'cm', '1 cm', 'about 4 1/2 in'],
  // 25 mm is 0.984 in, nearest to 1 in in sixteenths.
  ['25', 'mm', '1 mm', 'about 1 in'],
  // 3 ft is 91.44 cm; a whole foot deserves no finer than a tenth of a metre.
  ['3', 'ft', '1 ft', 'about 90 cm'],
  ['2', 'yd', '1 yd', 'about 1.8 m'],
] as const)('%s %s read to %s is %s', (text, unit, mark, expected) => {
  expect(inOtherSystem(measured(text, unit, mark))?.text).toBe(expected);
});

it('a length in metres is said in feet and inches', () => {
  // 1.5 m is 59.06 in; a tenth of a metre deserves no finer than a whole inch.
  expect(inOtherSystem(measured('1.5', 'm', '0.1 m'))?.unit).toBe('ft');
  expect(inOtherSystem(measured('1.5', 'm', '0.1 m'))?.text).toBe('about 4 ft 11 in');
});

it('a count has no other system', () => {
  expect(inOtherSystem(read(7, 'count', '1'))).toBeNull();
});
