import { describe, expect, test } from 'vitest';
import { exactPerUnit } from '#core/measure';
import { paperTasksRequest } from '../../../src/lib/ui/ruler-lessons/paper-request';
import { paperTasks } from '../../../src/lib/ui/ruler-lessons/paper-tasks';
import { pictureMeasures } from '../../../src/lib/ui/ruler-lessons/picture-measures';

/** A4 is the narrower sheet: 210 mm (ISO 216), with 12 mm of white on both sides. */
const roomMm = 186;
const stages = ['grade-1', 'grade-2', 'grade-3'] as const;
const families = ['inches', 'centimetres'] as const;

describe.each(stages)('the printed tasks for %s', (stage) => {
  test.each(families)('in %s fit the sheet, at true size, fifty sheets long', (family) => {
    for (let sheet = 1; sheet <= 50; sheet += 1) {
      const tasks = paperTasks(stage, family, sheet);
      expect(tasks.map(({ task }) => task.kind)).toEqual([
        ...['off-zero', 'off-zero', 'off-zero'],
        ...['between-marks', 'between-marks', 'between-marks'],
      ]);
      for (const { task, piece } of tasks) {
        // NIST Special Publication 811: an inch is 25.4 mm exactly.
        expect(piece.wholeLength).toBe(task.unit === 'in' ? 25.4 : 10);
        expect(piece.length + 2 * pictureMeasures('paper').pad).toBeLessThanOrEqual(roomMm);
        expect(piece.strip.to - Math.max(0, piece.strip.from)).toBeCloseTo(
          ((task.endsExact - task.beginsExact) / exactPerUnit(task.unit)) * piece.wholeLength,
          6,
        );
      }
      for (const kind of [tasks.slice(0, 3), tasks.slice(3)])
        expect(new Set(kind.map(({ task }) => task.answerExact)).size).toBe(3);
    }
  });
});

describe('the number of a sheet', () => {
  test('stands for its tasks: the same again, and others on another sheet', () => {
    const answers = (sheet: number) =>
      paperTasks('grade-2', 'inches', sheet).map(({ task }) => [task.beginsExact, task.endsExact]);
    expect(answers(4)).toEqual(answers(4));
    expect(answers(4)).not.toEqual(answers(5));
  });

  test.each([
    ['', 1, null],
    ['sheet=12&unit=cm', 12, 'centimetres'],
    ['sheet=3&unit=in', 3, 'inches'],
    ['sheet=0', 1, null],
    ['sheet=-2&unit=m', 1, null],
    ['sheet=1e9', 1, null],
    ['sheet=99999', 1, null],
  ])('is read from the address “%s”', (search, sheetNumber, family) => {
    expect(paperTasksRequest(new URLSearchParams(search))).toEqual({ sheetNumber, family });
  });
});
