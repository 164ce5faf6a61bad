import { seededRandom } from '#core/base';
import type { Stage } from '#core/journal';
import { betweenMarksTask, offZeroTask, type RulerTask, type UnitFamily } from '#core/lessons';
import { pictureMeasures } from './picture-measures';
import { pieceOfRuler, pieceOfTask, type PieceOfRuler } from './piece-of-ruler';
import { exactPerUnit } from '#core/measure';

/** A task as it is printed: a centimetre of its ruler is a centimetre of the paper. */
export interface PaperTask {
  readonly task: RulerTask;
  readonly piece: PieceOfRuler;
}

/**
 * The six tasks of a sheet: three off zero, then three between the marks, each with an answer of
 * its own within its kind. The same sheet number gives the same tasks, on any size of paper: only
 * tasks that fit the narrower one are taken.
 */
export function paperTasks(
  stage: Stage,
  family: UnitFamily,
  sheetNumber: number,
): readonly PaperTask[] {
  const random = seededRandom(sheetNumber);
  return [offZeroTask, betweenMarksTask].flatMap((make) => {
    const taken: PaperTask[] = [];
    for (let tries = 0; taken.length < ofEachKind; tries += 1) {
      if (tries > mostTries) throw new Error('No ruler task fits the sheet');
      const task = make(stage, family, random);
      const piece = pieceOfRuler(task, pieceOfTask(task), millimetresOf(task));
      const isNew = taken.every((other) => other.task.answerExact !== task.answerExact);
      if (isNew && piece.length + 2 * pictureMeasures('paper').pad <= roomMm)
        taken.push({ task, piece });
    }
    return taken;
  });
}

const ofEachKind = 3;
const mostTries = 500;
/** The width of A4 (ISO 216), the narrower sheet, inside margins of 12 mm. */
const roomMm = 210 - 2 * 12;

const nanometresPerMillimetre = 1_000_000;
const millimetresOf = ({ unit }: RulerTask): number => exactPerUnit(unit) / nanometresPerMillimetre;
