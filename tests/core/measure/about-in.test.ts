import { describe, expect, test } from 'vitest';
import { aboutIn, deservedMark, parseMeasured, type LengthUnit, type MarkId } from '#core/measure';
import units from '../../reference/units.json';

const about = (text: string, mark: MarkId, unit: LengthUnit) => {
  const read = parseMeasured(text, { unit: 'cm', mark });
  if (!read.ok) throw new Error(read.error.kind);
  expect(read.value.mark).toBe(mark);
  return aboutIn(Object.freeze(read.value), unit);
};

describe('a reading in the other unit', () => {
  // Source: NIST SP 811 (2008) B.7.2 and NIST LC 1137, as copied in units.json.
  const published = units.published_rounding.slice(0, 3);
  test.each([
    { row: published[0], mark: '1 ft' },
    { row: published[1], mark: '1 in' },
    { row: published[2], mark: '0.1 in' },
  ] as const)('$row.in is published as $row.reported', ({ row, mark }) => {
    if (!row) throw new Error('The reference has lost a row');
    const [, unit] = row.reported.split(' ');
    expect(about(row.in, mark, unit as LengthUnit).text).toBe(`about ${row.reported}`);
  });

  // Source: the rule of thumb derived from NIST SP 811 B.7 in the reference notes: sixteenths,
  // eighths and quarters deserve 0.1 cm at most, halves and wholes whole centimetres.
  test.each([
    ['1/16 in', 'cm', '1 mm'],
    ['1/8 in', 'cm', '1 mm'],
    ['1/4 in', 'cm', '1 mm'],
    ['1/2 in', 'cm', '1 cm'],
    ['1 in', 'cm', '1 cm'],
    ['0.1 in', 'cm', '1 mm'],
    ['0.01 in', 'mm', '0.1 mm'],
    ['1 ft', 'm', '0.1 m'],
    ['1 yd', 'm', '0.1 m'],
    // The mirror: the coarser neighbour in the ladder of halves, so that nothing is gained.
    ['1 cm', 'in', '1/2 in'],
    ['0.5 cm', 'in', '1/4 in'],
    ['1 mm', 'in', '1/16 in'],
    ['0.1 mm', 'in', '0.01 in'],
    ['0.1 m', 'in', '1 in'],
    ['1 m', 'yd', '1 yd'],
    // Within a system nothing is rounded.
    ['1 mm', 'm', '1 mm'],
    ['1/2 in', 'ft', '1/2 in'],
  ] as const)('read to %s deserves, in %s, the %s mark', (readTo, unit, mark) => {
    expect(deservedMark(readTo, unit)).toBe(mark);
  });

  test.each([
    ['4 1/2 in', '1/2 in', 'cm', 'about 11 cm', 110_000_000],
    ['4 1/2 in', '1/4 in', 'cm', 'about 11.4 cm', 114_000_000],
    ['5 in', '1/4 in', 'cm', 'about 12.7 cm', 127_000_000],
    ['10 in', '1/8 in', 'cm', 'about 25.4 cm', 254_000_000],
    ['0 in', '1/4 in', 'cm', 'about 0.0 cm', 0],
    ['12 cm', '1 cm', 'in', 'about 4 1/2 in', 114_300_000],
    ['12.7 cm', '1 mm', 'in', 'about 5 in', 127_000_000],
    // Source: units.json cm_to_nearest_fraction: 7.3 cm is nearest to 2 7/8 in in sixteenths.
    ['7.3 cm', '1 mm', 'in', 'about 2 7/8 in', 73_025_000],
    ['0.25 in', '0.01 in', 'mm', 'about 6.4 mm', 6_400_000],
    // 11.811 in, past the middle (11.75) of the half inch.
    ['30 cm', '1 cm', 'ft', 'about 1 ft', 304_800_000],
  ] as const)('%s read to %s is, in %s, %s', (text, mark, unit, words, exactAtMark) => {
    const shown = about(text, mark, unit);
    expect(shown).toMatchObject({ text: words, exactAtMark, unit });
  });

  test('writes a comma where commas are used', () => {
    const read = parseMeasured('5', { unit: 'in', mark: '1/4 in' });
    if (!read.ok) throw new Error(read.error.kind);
    expect(aboutIn(read.value, 'cm', { decimal: 'comma' }).text).toBe('about 12,7 cm');
  });

  test.each([
    ['125 mm', '1 mm', 'cm', '12.5 cm'],
    ['12 cm', '1 cm', 'mm', '120 mm'],
    ['18 in', '1 in', 'ft', '1 ft 6 in'],
    ['3 ft', '1 ft', 'in', '36 in'],
    ['1.25 m', '1 cm', 'cm', '125 cm'],
    ['12.5 cm', '1 mm', 'cm', '12.5 cm'],
  ] as const)('%s read to %s is exactly, in %s, %s', (text, mark, unit, words) => {
    const shown = about(text, mark, unit);
    expect(shown).toMatchObject({ text: words, mark, unit });
  });

  test('has no meaning for a count', () => {
    const seven = { text: '7', unit: 'count', mark: '1', exact: 7 } as const;
    expect(() => aboutIn(seven, 'cm')).toThrow('count');
  });
});
