import { failed, ok, type Result } from '#core/base';
import type { Stage } from '#core/journal';
import { countParts, pictureParts } from './count-parts';
import type { GraphKind, GraphTable } from './graph-table';
import { labelsOf } from './labels-of';
import { plotParts, timeParts, valueParts } from './measure-parts';
import type { NoGraph } from './no-graph';
import type { RightGraph, RightParts } from './right-graph';
import { sideWordsOf, titleWordsOf } from './words-of-table';

/**
 * What a right graph of this kind has, for this table and a child of this stage; or why there is
 * none. A picture graph needs counts; a bar graph counts or values; a line plot measures; a line
 * graph times. Only the shape of the table is looked at here: whether there are readings enough to
 * be worth drawing is told with the choices.
 *
 * Errors: see `NoGraph`. A table in two units is refused, since its numbers share no scale.
 * @example
 * rightGraphOf('bar-graph', { form: 'counts', counted: 'days', rows: [{ label: 'sun', count: 3 }, { label: 'rain', count: 1 }] }, 'grade-2').value.scale // => { from: 0, to: 3, step: 1, labels: ['0', '1', '2', '3'] }
 * rightGraphOf('line-plot', { form: 'counts', counted: 'days', rows: [] }, 'grade-2') // => { ok: false, error: { kind: 'wrong-table-for-kind', graph: 'line-plot', form: 'counts' } }
 */
export const rightGraphOf = (
  kind: GraphKind,
  table: GraphTable,
  stage: Stage,
): Result<RightGraph, NoGraph> => {
  const parts = partsOf(kind, table, stage);
  if (!parts.ok) return parts;
  const { scale, keyValue } = parts.value;
  return ok({
    ...{ kind, stage, table, keyValue },
    scale: { ...scale, labels: labelsOf(scale, table) },
    titleWords: titleWordsOf(table),
    sideWords: sideWordsOf(table),
  });
};

const partsOf = (kind: GraphKind, table: GraphTable, stage: Stage): Result<RightParts, NoGraph> => {
  if (kind === 'picture-graph' && table.form === 'counts') return pictureParts(table, stage);
  if (kind === 'bar-graph' && table.form === 'counts') return countParts(table, stage);
  if (kind === 'bar-graph' && table.form === 'values') return valueParts(table, stage);
  if (kind === 'line-plot' && table.form === 'measures') return plotParts(table);
  if (kind === 'line-graph' && table.form === 'times') return timeParts(table, stage);
  return failed({ kind: 'wrong-table-for-kind', graph: kind, form: table.form });
};
