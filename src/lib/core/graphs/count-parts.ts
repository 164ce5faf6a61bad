import { failed, ok, type Result } from '#core/base';
import type { Stage } from '#core/journal';
import type { CountTable } from './graph-table';
import type { NoGraph } from './no-graph';
import { mostSquaresUp } from './paper-room';
import { pictureKey } from './picture-key';
import type { RightParts } from './right-graph';
import { countScale } from './scale-for';

/** How many kinds a child of each stage sorts into (1.MD.C.4, 2.MD.D.10; grade 3: our own limit). */
export const mostKindsByStage: Readonly<Record<Stage, number>> = {
  'grade-1': 3,
  'grade-2': 4,
  'grade-3': 8,
};

/** The key and the rows of a right picture graph of counts. Not part of the public door. */
export const pictureParts = (table: CountTable, stage: Stage): Result<RightParts, NoGraph> => {
  const counts = countsOf(table, stage);
  if (!counts.ok) return counts;
  const largest = Math.max(...counts.value);
  const keyValue = pictureKey(counts.value, stage);
  if (keyValue === null) {
    return failed(
      stage === 'grade-3'
        ? { kind: 'no-key-fits' }
        : { kind: 'too-tall', need: largest, room: mostSquaresUp },
    );
  }
  const to = Math.ceil(largest / keyValue) * keyValue;
  return ok({ scale: { from: 0, to, step: keyValue }, keyValue });
};

/** The scale of right bars of counts. Not part of the public door. */
export const countParts = (table: CountTable, stage: Stage): Result<RightParts, NoGraph> => {
  const counts = countsOf(table, stage);
  if (!counts.ok) return counts;
  const scale = countScale(Math.max(...counts.value), stage);
  return scale.ok ? ok({ scale: scale.value, keyValue: null }) : scale;
};

const countsOf = (table: CountTable, stage: Stage): Result<readonly number[], NoGraph> => {
  const counts = table.rows.map(({ count }) => count);
  const most = mostKindsByStage[stage];
  if (counts.length < fewestKinds) {
    return failed({ kind: 'too-few', have: counts.length, need: fewestKinds });
  }
  if (counts.length > most) return failed({ kind: 'too-many-kinds', have: counts.length, most });
  if (counts.every((count) => count === 0)) return failed({ kind: 'no-numbers' });
  return ok(counts);
};

const fewestKinds = 2;
