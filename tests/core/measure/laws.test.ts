import fc from 'fast-check';
import { all, create } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  aboutIn,
  convertLength,
  deservedMark,
  exactPerUnit,
  formatExact,
  formatMeasured,
  isLengthUnit,
  largestCount,
  largestLengthExact,
  liesOnMark,
  longestReadingText,
  markById,
  marks,
  marksFor,
  nearestOnMark,
  parseMeasured,
  systemOf,
  toUnit,
  unitCatalogue,
  type LengthUnit,
  type Measured,
  type Unit,
} from '#core/measure';

const seeded = { seed: 20260309, numRuns: 2000 } as const;
const { fraction } = create(all ?? {});

const lengthUnits = unitCatalogue().map(({ unit }) => unit);
const unit = fc.constantFrom<Unit>(...lengthUnits, 'count');
const decimal = fc.constantFrom('point' as const, 'comma' as const);
const trailingZeros = fc.constantFrom('drop' as const, 'keep' as const);

/** Any reading there can be: a unit, one of its marks, and some whole number of its steps. */
const measured = unit
  .chain((unit) => fc.record({ unit: fc.constant(unit), mark: fc.constantFrom(...marksFor(unit)) }))
  .chain(({ unit, mark }) => {
    const largest = unit === 'count' ? largestCount : largestLengthExact;
    const most = Math.floor(largest / mark.exact);
    const steps = fc.oneof(fc.nat({ max: Math.min(most, 500) }), fc.nat({ max: most }));
    return steps.map((count): Measured => {
      return Object.freeze({ text: '', unit, mark: mark.id, exact: count * mark.exact });
    });
  });

const length = measured.filter(({ unit }) => isLengthUnit(unit));

describe('writing and reading again', () => {
  test('gives the same unit, mark and exact value, whatever unit is chosen meanwhile', () => {
    fc.assert(
      fc.property(measured, unit, decimal, trailingZeros, (reading, other, decimal, zeros) => {
        const text = formatMeasured(reading, { decimal, trailingZeros: zeros });
        const chosen = reading.unit === 'count' || other === 'count' ? reading.unit : other;
        const again = parseMeasured(text, { unit: chosen, mark: reading.mark, decimal });
        expect(again).toEqual({ ok: true, value: { ...reading, text } });
      }),
      seeded,
    );
  });

  test('without the mark gives the same value, on a mark no finer than it was', () => {
    fc.assert(
      fc.property(measured, decimal, (reading, decimal) => {
        const text = formatMeasured(reading, { decimal });
        const again = parseMeasured(text, { unit: reading.unit, decimal });
        if (!again.ok) throw new Error(`${text}: ${again.error.kind}`);
        expect(again.value).toMatchObject({ unit: reading.unit, exact: reading.exact });
        const { exact } = markById(again.value.mark);
        expect(exact).toBeGreaterThanOrEqual(markById(reading.mark).exact);
      }),
      seeded,
    );
  });

  test('a reading never fills more text than is read', () => {
    fc.assert(
      fc.property(measured, (reading) => {
        expect(formatMeasured(reading).length).toBeLessThanOrEqual(longestReadingText);
      }),
      seeded,
    );
  });

  test('a change and the same change backwards differ only in sign', () => {
    fc.assert(
      fc.property(length, fc.nat({ max: 5_000_000 }), ({ unit, mark, exact }, extra) => {
        const forwards = formatExact(exact + extra, unit, mark);
        const backwards = formatExact(-exact - extra, unit, mark);
        const isNothing = nearestOnMark(exact + extra, mark) === 0;
        expect(backwards).toBe(isNothing ? forwards : `\u2212${forwards}`);
      }),
      seeded,
    );
  });
});

describe('reading numbers', () => {
  const sixteenth = fc.record({
    whole: fc.nat({ max: 400 }),
    over: fc.integer({ min: 1, max: 15 }),
  });

  test('agrees with the exact fractions of mathjs, however the fraction is joined', () => {
    fc.assert(
      fc.property(sixteenth, ({ whole, over }) => {
        const { n, d } = fraction(`${whole} ${over}/16`);
        const exact = (BigInt(n) * 25_400_000n) / BigInt(d);
        for (const join of [' ', '-', ' and ', '\u00a0']) {
          const text = `${whole}${join}${over}/16 in`;
          const read = parseMeasured(text, { unit: 'cm' });
          expect([text, read]).toMatchObject([text, { value: { exact: Number(exact) } }]);
        }
      }),
      seeded,
    );
  });

  test('keeps every tenth of a millimetre exact, where doubles do not', () => {
    fc.assert(
      fc.property(fc.nat({ max: 10_000_000 }), (tenths) => {
        const text = `${Math.floor(tenths / 10)}.${tenths % 10}`;
        const read = parseMeasured(text, { unit: 'mm' });
        expect(read).toMatchObject({ ok: true, value: { exact: tenths * 100_000 } });
      }),
      seeded,
    );
  });

  const howToParse = fc.record({
    unit,
    decimal,
    mark: fc.option(fc.constantFrom(...marks.map(({ id }) => id)), { nil: undefined }),
  });
  const alphabet = [
    ...'0123456789./,½¾⅓⁄-–−\'"″ \t٣m',
    'in',
    'ft',
    'yd',
    'cm',
    'mm',
    ' and ',
    '😀',
  ];
  const pieces = fc.array(fc.constantFrom(...alphabet), { maxLength: 14 });
  const numbers = [
    '0',
    '3',
    '12',
    '4 1/2',
    '5/4',
    '1/3',
    '½',
    '4½',
    '4-3/8',
    '1.5',
    '0,25',
    '1,234',
  ];
  const unitWords = ['', ' in', '"', ' ft ', "'", ' cm', 'mm', ' m ', ' yd, ', ' and '];
  const parts = fc.array(
    fc
      .tuple(fc.constantFrom(...numbers), fc.constantFrom(...unitWords))
      .map((part) => part.join('')),
    { minLength: 1, maxLength: 3 },
  );
  const likely = fc.oneof(pieces, parts).map((each) => each.join(''));
  const anything = fc.oneof(likely, fc.string({ unit: 'binary', maxLength: 80 }));

  const isSound = (reading: Measured): void => {
    const { exact, mark, unit } = reading;
    const largest = unit === 'count' ? largestCount : largestLengthExact;
    expect(Number.isSafeInteger(exact) && exact >= 0 && exact <= largest).toBe(true);
    expect(liesOnMark(exact, mark)).toBe(true);
    expect(marksFor(unit).map(({ id }) => id)).toContain(mark);
  };

  test('never throws; it ends in a sound reading or in an error with a place', () => {
    let readings = 0;
    fc.assert(
      fc.property(anything, howToParse, (text, how) => {
        const result = parseMeasured(text, how);
        if (result.ok) {
          readings += 1;
          isSound(result.value);
          expect(result.value.text).toBe(text.trim());
          return;
        }
        const { position, read } = result.error;
        expect(position).toBeGreaterThanOrEqual(0);
        expect(text.slice(position).startsWith(read)).toBe(true);
      }),
      { ...seeded, numRuns: 5000 },
    );
    // The law would say nothing if all were errors.
    expect(readings).toBeGreaterThan(200);
  });

  test('every reading offered can be read, and means what it offers', () => {
    let offered = 0;
    fc.assert(
      fc.property(likely, howToParse, (text, how) => {
        const result = parseMeasured(text, how);
        if (result.ok) return;
        for (const choice of result.error.choices ?? []) {
          offered += 1;
          isSound(choice);
          const { unit, mark } = choice;
          expect(parseMeasured(choice.text, { unit, mark, decimal: how.decimal })).toEqual({
            ok: true,
            value: choice,
          });
        }
      }),
      { ...seeded, numRuns: 5000 },
    );
    expect(offered).toBeGreaterThan(200);
  });
});

describe('the nearest place on a mark', () => {
  test('is on the mark, at most half a step away, and stays where it is', () => {
    fc.assert(
      fc.property(length, fc.nat({ max: 1_000_000_000 }), ({ mark }, exact) => {
        const onMark = nearestOnMark(exact, mark);
        expect(liesOnMark(onMark, mark)).toBe(true);
        expect(Math.abs(onMark - exact) * 2).toBeLessThanOrEqual(markById(mark).exact);
        expect(nearestOnMark(onMark, mark)).toBe(onMark);
      }),
      seeded,
    );
  });
});

describe('another unit', () => {
  const lengthUnit = fc.constantFrom(...lengthUnits);

  test('converts there and back to the very same double', () => {
    fc.assert(
      fc.property(length, lengthUnit, (reading, to) => {
        const from = reading.unit as LengthUnit;
        const value = toUnit(reading.exact, from);
        const there = convertLength(value, from, to);
        expect(there).toBe(toUnit(reading.exact, to));
        expect(convertLength(there, to, from)).toBe(value);
      }),
      seeded,
    );
  });

  test('shows no more than was read: the mark is never finer than NIST SP 811 B.7 allows', () => {
    fc.assert(
      fc.property(length, lengthUnit, (reading, to) => {
        const mark = deservedMark(reading.mark, to);
        const readStep = markById(reading.mark).exact;
        const shownStep = markById(mark).exact;
        const shown = aboutIn(reading, to);
        expect(shown).toMatchObject({ mark, unit: to });
        if (systemOf(reading.unit) === systemOf(to)) {
          expect(shown.exactAtMark).toBe(reading.exact);
          return;
        }
        // Decimal marks are ten apart: less than one digit may be gained by any rounding.
        expect(shownStep * 10).toBeGreaterThanOrEqual(readStep);
        expect(shown.exactAtMark).toBe(nearestOnMark(reading.exact, mark));
        expect(shown.text.startsWith('about ')).toBe(true);
      }),
      seeded,
    );
  });

  test('a whole number of units is that many exact steps', () => {
    fc.assert(
      fc.property(unit, fc.nat({ max: 1000 }), (unit, count) => {
        expect(toUnit(count * exactPerUnit(unit), unit)).toBe(count);
      }),
      seeded,
    );
  });
});
