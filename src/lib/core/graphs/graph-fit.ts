import type { Stage } from '#core/journal';
import { exactPerUnit, markById } from '#core/measure';
import type { GraphKind, GraphTable } from './graph-table';

/** Which graphs a form of table may become. */
export const graphsByForm: Readonly<Record<GraphTable['form'], readonly GraphKind[]>> = {
  counts: ['picture-graph', 'bar-graph'],
  values: ['bar-graph'],
  measures: ['line-plot'],
  times: ['line-graph'],
};

/**
 * Whether a child of this stage draws such a graph alone, beside a grown-up, or in a later grade:
 * bars from grade 2 on (on a given scale by fives or tens beside a grown-up), line plots of whole
 * units from grade 2 and of parts from grade 3, line graphs always beside a grown-up. (Common Core 2.MD.D.9-10 and 3.MD.B.3-4; line graphs: time
 * graphs are year 4 in England's curriculum.)
 * @example
 * graphFit('line-graph', { form: 'times' }, 'grade-3') // => 'guided'
 * graphFit('line-plot', { form: 'measures', unit: 'in', mark: '1/2 in' }, 'grade-2') // => 'later'
 */
export const graphFit = (graph: GraphKind, table: GraphTable, stage: Stage): GraphFit => {
  if (graph === 'line-graph') return 'guided';
  if (graph === 'line-plot' && table.form === 'measures') {
    const isWhole = markById(table.mark).exact >= exactPerUnit(table.unit);
    return stage === 'grade-3' || (stage === 'grade-2' && isWhole) ? 'now' : 'later';
  }
  if (graph !== 'bar-graph') return 'now';
  const isGiven = table.form === 'values' && table.givenSteps === true;
  return stage === 'grade-1' || isGiven ? 'guided' : 'now';
};

export type GraphFit = 'now' | 'guided' | 'later';
