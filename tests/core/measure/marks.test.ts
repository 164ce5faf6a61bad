import { describe, expect, test } from 'vitest';
import {
  formatExactNumber,
  liesOnMark,
  markById,
  markFits,
  marks,
  marksFor,
  nearestOnMark,
  parseMeasured,
  readsRight,
  toUnit,
  type LengthUnit,
  type Unit,
} from '#core/measure';
import ruler from '../../reference/ruler.json';
import units from '../../reference/units.json';
import { markNamed, unitRows } from './reference-values';

/** A decimal number of millimetres in whole nanometres, digit by digit. */
const nanometres = (millimetres: string): number => {
  const [whole = '', decimals = ''] = millimetres.replace('-', '').split('.');
  const size = Number(whole + decimals.padEnd(6, '0'));
  return millimetres.startsWith('-') ? -size : size;
};

describe('marks', () => {
  // Source: ruler.json, steps recomputed there; NIST HB 44 5.52 for which divisions rulers have.
  test.each(ruler.steps)('a step of $smallest_division is $step_mm mm', (row) => {
    const mark = markById(markNamed(row.smallest_division));
    expect(mark.exact).toBe(nanometres(row.step_mm));
    expect(mark.exact / 2).toBe(nanometres(row.half_step_mm));
    expect(toUnit(mark.exact / 2, mark.unit)).toBe(Number(row.half_step_in_own_unit));
    expect(mark.exact).toBe(nanometres(row.difference_of_two_readings_max_mm));
  });

  // Source: units.json integer_base, in tenths of a micrometre.
  test.each(['1 in', '1/2 in', '1/4 in', '1/8 in', '1/16 in', '1 mm', '1 cm', '0.01 in'] as const)(
    'the step of %s is the whole number of small units that the reference gives',
    (id) => {
      expect(markById(id).exact).toBe(Number(units.integer_base[id]) * 100);
    },
  );

  test('every mark is a whole number of nanometres, and belongs to its own unit', () => {
    for (const mark of marks) {
      expect(Number.isSafeInteger(mark.exact)).toBe(true);
      expect(markFits(mark.id, mark.unit)).toBe(true);
    }
  });

  test.each(['in', 'ft', 'yd', 'mm', 'cm', 'm', 'count'] as const)(
    'the marks of %s go from coarse to fine within fractions and within decimals',
    (unit: Unit) => {
      for (const way of ['fraction', 'decimal']) {
        const steps = marksFor(unit).filter(({ writtenAs }) => writtenAs === way);
        const sizes = steps.map(({ exact }) => exact);
        expect(sizes).toEqual(sizes.toSorted((one, other) => other - one));
      }
    },
  );

  test('an unknown mark is our own mistake and throws', () => {
    expect(() => markById('1/3 in' as never)).toThrow('1/3 in');
  });
});

describe('the nearest place on a mark', () => {
  // Source: units.json cm_to_nearest_fraction, rational arithmetic, ties marked.
  test.each(units.cm_to_nearest_fraction)(
    '$value cm is nearest to $answer_in in on the $nearest mark',
    (row) => {
      const exact = nanometres(row.value) * 10;
      const id = markNamed(row.nearest);
      const onMark = nearestOnMark(exact, id);
      expect(formatExactNumber(onMark, 'in', id)).toBe(row.answer_in);
      expect(toUnit(onMark, 'in')).toBe(row.answer_double);
      expect(onMark - exact).toBe(nanometres(String(row.error_mm)));
      expect(Math.abs(onMark - exact) * 2 === markById(id).exact).toBe(row.tie);
    },
  );

  test('takes an exact half away from zero, whichever way the plant grew', () => {
    // Source: units.json double_traps: Math.round(-2.5) is -2, and a change backwards would differ.
    expect(nearestOnMark(25_000_000, '1 cm')).toBe(30_000_000);
    expect(nearestOnMark(-25_000_000, '1 cm')).toBe(-30_000_000);
    expect(nearestOnMark(-4_999_999, '1 cm')).toBe(0);
  });

  test('rounds a mean that is no whole number of nanometres', () => {
    expect(nearestOnMark(10_000_000 / 3, '1 mm')).toBe(3_000_000);
  });

  test('refuses what is not a number', () => {
    expect(() => nearestOnMark(NaN, '1 cm')).toThrow(RangeError);
    expect(() => nearestOnMark(Infinity, '1 cm')).toThrow(RangeError);
  });
});

describe('a right reading', () => {
  // Source: ruler.json accept: within half a step, both neighbours at the exact tie.
  test.each(ruler.accept)('$reading of $true_mm mm to the $step mark', (row) => {
    const reading = parseMeasured(row.reading, { unit: 'cm' });
    if (!reading.ok) throw new Error(reading.error.kind);
    const id = markNamed(row.step);
    const trueExact = nanometres(row.true_mm);
    expect(reading.value.exact - trueExact).toBe(nanometres(row.error_mm));
    const expected = row['within_half_step (|e| <= a)'];
    expect(readsRight(reading.value.exact, trueExact, id)).toBe(expected);
    expect(liesOnMark(reading.value.exact, id)).toBe(true);
  });
});

describe('the exact value of a reading', () => {
  // Source: units.json, the exact fraction of the target unit for each value.
  test.each(unitRows)('of $value $from is $exact_fraction $to in whole nanometres', (row) => {
    const read = parseMeasured(row.value, { unit: row.from });
    if (!read.ok) throw new Error(read.error.kind);
    const [over = '', under = '1'] = row.exact_fraction.split('/');
    const perUnit = BigInt(exactSteps[row.to]);
    expect(BigInt(read.value.exact) * BigInt(under)).toBe(BigInt(over) * perUnit);
    expect(read.value.unit).toBe(row.from);
  });
});

/** Whole nanometres a unit holds, written out here and not taken from the code under test. */
const exactSteps: Readonly<Record<LengthUnit, number>> = {
  mm: 1e6,
  cm: 1e7,
  m: 1e9,
  in: 254e5,
  ft: 3048e5,
  yd: 9144e5,
};
