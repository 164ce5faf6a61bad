import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { markById, marksFor, type LengthUnit, type MarkId } from '#core/measure';
import reference from '../../reference/ruler.json';
import { nearestMark, rulerTicks } from '../../../src/lib/ui/ruler/ruler-ticks';

const inch = 25_400_000;
const centimetre = 10_000_000;
const mm = 1_000_000;

const countByRank = (ticks: ReturnType<typeof rulerTicks>) =>
  Object.fromEntries(
    [...new Set(ticks.map((tick) => tick.rank))].map((rank) => [
      rank,
      ticks.filter((tick) => tick.rank === rank).length,
    ]),
  );

describe('the lines of a ruler', () => {
  test('a foot rule in sixteenths has a line of its own length for each kind of part', () => {
    // A-A-355: different lengths for 1/2, 1/4, 1/8 and 1/16. In 12 inches there are 13 whole
    // lines, one half in each inch, two more quarters, four more eighths, eight more sixteenths.
    const ticks = rulerTicks({ unit: 'in', mark: '1/16 in', lengthExact: 12 * inch });
    expect(countByRank(ticks)).toEqual({
      whole: 13,
      half: 12,
      quarter: 24,
      eighth: 48,
      sixteenth: 96,
    });
  });

  test('a centimetre rule has halves and tenths between its whole lines', () => {
    const ticks = rulerTicks({ unit: 'cm', mark: '1 mm', lengthExact: 30 * centimetre });
    expect(countByRank(ticks)).toEqual({ whole: 31, half: 30, tenth: 240 });
  });

  test('zero is at the very edge and every whole unit has its number', () => {
    const ticks = rulerTicks({ unit: 'in', mark: '1/4 in', lengthExact: 12 * inch });
    expect(ticks[0]).toMatchObject({ exact: 0, position: 0, label: '0' });
    expect(ticks[ticks.length - 1]).toMatchObject({ exact: 12 * inch, position: 1, label: '12' });
    const numbered = ticks.filter((tick) => tick.label !== null);
    expect(numbered.map((tick) => Number(tick.label))).toEqual([
      0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12,
    ]);
    for (const tick of numbered) expect(tick.exact).toBe(Number(tick.label) * inch);
  });

  test('one step finer than the mark is drawn faintly, to show half-way, and no finer', () => {
    const ticks = rulerTicks({ unit: 'in', mark: '1/2 in', lengthExact: inch });
    expect(ticks.map((tick) => [tick.position, tick.rank, tick.onMark])).toEqual([
      [0, 'whole', true],
      [0.25, 'quarter', false],
      [0.5, 'half', true],
      [0.75, 'quarter', false],
      [1, 'whole', true],
    ]);
    const bare = rulerTicks({ unit: 'in', mark: '1/2 in', lengthExact: inch, detail: 'mark' });
    expect(bare.map((tick) => tick.position)).toEqual([0, 0.5, 1]);
    const whole = rulerTicks({ unit: 'in', mark: '1/8 in', lengthExact: inch, detail: 'whole' });
    expect(whole.map((tick) => tick.position)).toEqual([0, 1]);
  });

  test('an inch read in tenths is divided in tenths, with a longer line at the half', () => {
    const ticks = rulerTicks({ unit: 'in', mark: '0.1 in', lengthExact: inch });
    expect(ticks).toHaveLength(11);
    expect(ticks[5]).toMatchObject({ exact: 12_700_000, rank: 'half' });
  });

  test('a millimetre rule is numbered in tens, and numbers can be thinned', () => {
    const tens = rulerTicks({ unit: 'mm', mark: '1 mm', lengthExact: 30 * mm });
    expect(tens.filter((tick) => tick.label).map((tick) => tick.label)).toEqual([
      '0',
      '10',
      '20',
      '30',
    ]);
    const fives = {
      unit: 'cm',
      mark: '1 cm',
      lengthExact: 12 * centimetre,
      labelEvery: 5,
    } as const;
    expect(
      rulerTicks(fives)
        .filter((tick) => tick.label)
        .map((tick) => tick.label),
    ).toEqual(['0', '5', '10']);
  });

  test('a length that does not end on a line draws no line past its end', () => {
    const ticks = rulerTicks({ unit: 'in', mark: '1 in', lengthExact: 2.4 * inch });
    expect(ticks.map((tick) => tick.exact)).toEqual([0, 0.5, 1, 1.5, 2].map((n) => n * inch));
  });

  test.each(['in', 'ft', 'yd', 'mm', 'cm', 'm'] as const)(
    'every mark of the unit %s lies on its ruler, in order and equally spaced',
    (unit: LengthUnit) => {
      for (const mark of marksFor(unit)) {
        const ticks = rulerTicks({ unit, mark: mark.id, lengthExact: 914_400_000 * 2 });
        const steps = new Set(
          ticks.slice(1).map((tick, index) => tick.exact - ticks[index]!.exact),
        );
        expect(steps.size).toBe(1);
        expect(ticks.some((tick) => tick.label !== null && tick.exact > 0)).toBe(true);
      }
    },
  );
});

describe('tapping a ruler', () => {
  // Readings of known lengths, right when no further off than half a step: see the file's sources.
  test.each(reference.accept)('$true_mm mm read to $step: $reading', (known) => {
    const trueExact = Math.round(Number(known.true_mm) * mm);
    const [number = '', unit] = known.reading.split(/ (?=[a-z]+$)/);
    const readExact =
      number.split(' ').reduce((sum, part) => {
        const [top = 0, bottom = 1] = part.split('/').map(Number);
        return sum + top / bottom;
      }, 0) * { in: inch, cm: centimetre, mm }[unit as 'in' | 'cm' | 'mm'];

    const picked = nearestMark(trueExact, known.step as MarkId, 12 * inch);
    const isRight = known['within_half_step (|e| <= a)'];
    const isTie = Math.abs(trueExact - readExact) * 2 === markById(known.step as MarkId).exact;
    if (!isRight) expect(picked).not.toBe(readExact);
    else if (isTie) expect(Math.max(picked, readExact)).toBe(picked);
    else expect(picked).toBe(readExact);
  });

  test('exactly half-way goes up: 85.725 mm is 3 3/8 in, so 3 1/2 in to the quarter inch', () => {
    expect(nearestMark(85_725_000, '1/4 in', 12 * inch)).toBe(3.5 * inch);
  });

  test('a tap beside the ruler picks its nearest end', () => {
    expect(nearestMark(-5 * mm, '1/4 in', 12 * inch)).toBe(0);
    expect(nearestMark(14 * inch, '1/4 in', 12 * inch)).toBe(12 * inch);
    expect(nearestMark(2.9 * inch, '1 in', 2.4 * inch)).toBe(2 * inch);
  });

  test('the mark picked is on the ruler, and no other mark is nearer', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 12 * inch }),
        fc.constantFrom<MarkId>('1 in', '1/2 in', '1/4 in', '1/8 in', '1 cm', '0.5 cm', '1 mm'),
        (exact, mark) => {
          const step = markById(mark).exact;
          const length = 12 * inch - ((12 * inch) % step);
          const picked = nearestMark(exact, mark, length);
          expect(picked % step).toBe(0);
          expect(picked).toBeLessThanOrEqual(length);
          if (exact <= length) expect(Math.abs(picked - exact) * 2).toBeLessThanOrEqual(step);
          expect(nearestMark(picked, mark, length)).toBe(picked);
        },
      ),
      { seed: 20261125 },
    );
  });
});
