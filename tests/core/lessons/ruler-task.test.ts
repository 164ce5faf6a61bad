import { describe, expect, it } from 'vitest';
import { seededRandom } from '#core/base';
import { stages, type RulerCheck } from '#core/journal';
import {
  betweenMarksTask,
  judgeRulerTask,
  offZeroTask,
  offZeroTaskOf,
  unitFamilies,
  wholesAround,
  zeroCheck,
  type OffZeroPlace,
  type RulerTask,
} from '#core/lessons';
import { exactPerUnit, formatExact, liesOnMark, readsRight } from '#core/measure';

const inches = (count: number): number => count * exactPerUnit('in');
const cm = (count: number): number => Math.round(count * exactPerUnit('cm'));

const taskOf = (place: OffZeroPlace): RulerTask => {
  const made = offZeroTaskOf(place);
  if (!made.ok) throw new Error(made.error.kind);
  return made.value;
};

/** Every stage and family, with many seeds. */
const kinds = stages.flatMap((stage) => unitFamilies.map((family) => [stage, family] as const));
const seeds = Array.from({ length: 100 }, (_, seed) => seed);

describe('the national item with a thing from 8 to 10 1/2 inches', () => {
  const task = taskOf({ unit: 'in', mark: '1/2 in', begins: inches(8), ends: inches(10.5) });

  // NAEP, grade 4: right 2 1/2; the wrong answers tracked were 10 1/2 and 3 1/2.
  it.each([
    ['2 1/2', { kind: 'right' }],
    ['2.5 in', { kind: 'right' }],
    ['10 1/2', { kind: 'slip', slip: 'read-the-end' }],
    ['3 1/2', { kind: 'slip', slip: 'counted-marks' }],
    // Six half-inch marks are passed, five half-inch spaces.
    ['3', { kind: 'slip', slip: 'counted-small-marks' }],
    ['5', { kind: 'slip', slip: 'small-for-whole' }],
    ['4', { kind: 'other' }],
  ] as const)('judges %s', (answer, judgement) => {
    expect(judgeRulerTask(task, answer)).toEqual(judgement);
  });

  it('judges an amount as it judges its text', () => {
    expect(judgeRulerTask(task, inches(2.5))).toEqual({ kind: 'right' });
    expect(judgeRulerTask(task, inches(10.5))).toEqual({ kind: 'slip', slip: 'read-the-end' });
    expect(judgeRulerTask(task, Number.NaN)).toEqual({ kind: 'other' });
  });

  it('does not guess at text that is no reading', () => {
    const judgement = judgeRulerTask(task, 'two and a bit');
    expect(judgement.kind).toBe('unreadable');
    expect(judgeRulerTask(task, '').kind).toBe('unreadable');
  });
});

describe('an off-zero task', () => {
  it('takes the same length in another unit of its ruler for right', () => {
    const task = taskOf({ unit: 'cm', mark: '1 mm', begins: cm(4), ends: cm(6.5) });
    expect(judgeRulerTask(task, '25 mm')).toEqual({ kind: 'right' });
    expect(judgeRulerTask(task, '2.5')).toEqual({ kind: 'right' });
    expect(judgeRulerTask(task, '2,5', { decimal: 'comma' })).toEqual({ kind: 'right' });
    // The small marks counted and called centimetres.
    expect(judgeRulerTask(task, '25')).toEqual({ kind: 'slip', slip: 'small-for-whole' });
  });

  it('offers no slip that two ways lead to, nor one that is the answer', () => {
    // From 1 on, the end's number and the count of the marks are both one more.
    const task = taskOf({ unit: 'in', mark: '1 in', begins: inches(1), ends: inches(5) });
    expect(task.slips).toEqual([]);
    expect(judgeRulerTask(task, '5')).toEqual({ kind: 'other' });
  });

  it('does not speak of counted whole marks where the thing begins between them', () => {
    const task = taskOf({ unit: 'in', mark: '1/2 in', begins: inches(2.5), ends: inches(4.5) });
    expect(task.slips.map(({ slip }) => slip)).toEqual([
      'read-the-end',
      'counted-small-marks',
      'small-for-whole',
    ]);
  });

  it.each([
    ['no-length', { begins: inches(3), ends: inches(3) }],
    ['no-length', { begins: inches(3), ends: inches(2) }],
    ['off-the-mark', { begins: inches(2.25), ends: inches(3) }],
    ['off-the-ruler', { begins: inches(11), ends: inches(13) }],
    ['off-the-ruler', { begins: inches(3), ends: inches(5), rulerFrom: inches(4) }],
    ['begins-at-zero', { begins: 0, ends: inches(3) }],
    ['off-the-mark', { begins: Number.NaN, ends: inches(3) }],
  ] as const)('of a place that is none is refused: %s', (kind, place) => {
    expect(offZeroTaskOf({ unit: 'in', mark: '1/2 in', ...place })).toEqual({
      ok: false,
      error: { kind },
    });
  });

  it('is the same for the same seed', () => {
    for (const seed of seeds.slice(0, 20)) {
      const [one, other] = [seededRandom(seed), seededRandom(seed)];
      expect(offZeroTask('grade-3', 'inches', one)).toEqual(
        offZeroTask('grade-3', 'inches', other),
      );
    }
  });

  it.each(kinds)('for %s in %s lies on its marks, off zero, on its ruler', (stage, family) => {
    for (const seed of seeds) {
      const task = offZeroTask(stage, family, seededRandom(seed));
      const { unit, mark, beginsExact, endsExact, rulerFromExact, rulerToExact } = task;
      for (const exact of [beginsExact, endsExact, rulerFromExact, rulerToExact]) {
        expect(liesOnMark(exact, mark)).toBe(true);
      }
      expect(beginsExact).toBeGreaterThan(Math.max(exactPerUnit(unit), rulerFromExact));
      expect(endsExact).toBeLessThanOrEqual(rulerToExact);
      expect(task.answerExact).toBe(endsExact - beginsExact);
    }
  });

  it.each(kinds)('for %s in %s tells the two famous slips apart', (stage, family) => {
    for (const seed of seeds) {
      const task = offZeroTask(stage, family, seededRandom(seed));
      expect(task.slips.map(({ slip }) => slip)).toEqual(
        expect.arrayContaining(['read-the-end', 'counted-marks']),
      );
      const amounts = [task.answerExact, ...task.slips.map(({ exact }) => exact)];
      expect(new Set(amounts).size).toBe(amounts.length);
      for (const { slip, exact } of task.slips) {
        const text = formatExact(exact, task.unit, task.mark);
        expect(judgeRulerTask(task, text)).toEqual({ kind: 'slip', slip });
      }
    }
  });

  it('comes as a broken ruler and as a moved thing', () => {
    const broken = seeds.filter(
      (seed) => offZeroTask('grade-2', 'inches', seededRandom(seed)).rulerFromExact > 0,
    );
    // 50 of 100 expected; six standard deviations of sqrt(100) / 2 are 30.
    expect(Math.abs(broken.length - 50)).toBeLessThan(30);
  });

  it('reads whole units to grade 2, and halves, quarters or millimetres in grade 3', () => {
    const marksOf = (stage: (typeof stages)[number], family: (typeof unitFamilies)[number]) =>
      [...new Set(seeds.map((seed) => offZeroTask(stage, family, seededRandom(seed)).mark))].sort();
    expect(marksOf('grade-1', 'inches')).toEqual(['1 in']);
    expect(marksOf('grade-2', 'centimetres')).toEqual(['1 cm']);
    expect(marksOf('grade-3', 'inches')).toEqual(['1/2 in', '1/4 in']);
    expect(marksOf('grade-3', 'centimetres')).toEqual(['1 mm']);
  });

  it('stays within 10 for first graders', () => {
    for (const seed of seeds) {
      for (const family of unitFamilies) {
        const task = offZeroTask('grade-1', family, seededRandom(seed));
        expect(task.endsExact / exactPerUnit(task.unit)).toBeLessThanOrEqual(10);
      }
    }
  });
});

describe('a task between the marks', () => {
  it.each(kinds)('for %s in %s ends between two whole numbers', (stage, family) => {
    for (const seed of seeds) {
      const task = betweenMarksTask(stage, family, seededRandom(seed));
      const [lower, upper] = wholesAround(task);
      expect(upper).toBe(lower + 1);
      expect(task.endsExact).toBeLessThan(task.rulerToExact);
      expect(readsRight(task.answerExact, task.endsExact, task.mark)).toBe(true);
      expect(judgeRulerTask(task, formatExact(task.answerExact, task.unit, task.mark))).toEqual({
        kind: 'right',
      });
    }
  });

  it('has one nearer whole number where only whole numbers are read', () => {
    for (const seed of seeds) {
      const task = betweenMarksTask('grade-2', 'centimetres', seededRandom(seed));
      const { slips, endsExact, answerExact } = task;
      expect(slips).toHaveLength(1);
      const [{ slip, exact }] = slips as [(typeof slips)[number]];
      expect(slip).toBe('farther-whole');
      expect(Math.abs(exact - endsExact)).toBeGreaterThan(Math.abs(answerExact - endsExact));
      expect(Math.abs(exact - answerExact)).toBe(cm(1));
    }
  });

  it('names what went before the parts and behind them', () => {
    const task = betweenMarksTask('grade-3', 'inches', from([0.99, 0.3, 0]));
    // A quarter-inch ruler, 4 1/4 inches.
    expect([task.mark, task.answerExact]).toEqual(['1/4 in', inches(4.25)]);
    expect(wholesAround(task)).toEqual([4, 5]);
    const judgements = ['4', '5 1/4', '4 1/2', '4 3/4', '17', '5'].map((answer) =>
      judgeRulerTask(task, answer),
    );
    expect(judgements.map((each) => (each.kind === 'slip' ? each.slip : each.kind))).toEqual([
      'left-part-off',
      'next-whole',
      'counted-small-marks',
      'counted-back',
      'small-for-whole',
      'other',
    ]);
  });

  it('cannot be counted back wrongly from the middle', () => {
    const task = betweenMarksTask('grade-3', 'inches', from([0, 0.3, 0]));
    expect([task.mark, task.answerExact]).toEqual(['1/2 in', inches(4.5)]);
    expect(task.slips.map(({ slip }) => slip)).not.toContain('counted-back');
  });
});

describe('where the ruler’s zero is', () => {
  const check = (day: string, zeroAtEdge: boolean, isTakenBack = false) =>
    ({
      ...{ day, zeroAtEdge },
      takenBack: isTakenBack ? { by: 'entry', at: 'stamp', author: null } : null,
    }) as unknown as RulerCheck;

  it('is not known before it is looked at', () => {
    expect(zeroCheck([])).toEqual({ kind: 'not-checked' });
    expect(zeroCheck([check('2026-03-02', false, true)])).toEqual({ kind: 'not-checked' });
  });

  it('is what the newest check says, and a dead zone comes with what helps', () => {
    const checks = [check('2026-03-09', true), check('2026-03-02', false)];
    expect(zeroCheck(checks)).toEqual({ kind: 'zero-at-edge', day: '2026-03-09' });
    expect(zeroCheck([...checks, check('2026-03-09', false)])).toMatchObject({
      kind: 'dead-zone',
      fixes: ['strip-first', 'zero-at-edge-ruler', 'trim'],
    });
  });
});

/** Chance that gives these numbers one after the other. */
function from(numbers: readonly number[]): () => number {
  const left = [...numbers];
  return () => left.shift() ?? 0;
}
