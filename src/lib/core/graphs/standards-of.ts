import { weatherWords, type Investigation, type Stage } from '#core/journal';
import { exactPerUnit, markById } from '#core/measure';
import type { GraphKind, GraphTable, MeasureTable } from './graph-table';
import type { TableSource } from './table-choice';

/** Codes of the standards a drawing serves, as plain data; their words are the face's. */
export const standardCodes = [
  ...(['1.MD.A.1', '1.MD.A.2', '1.MD.C.4'] as const),
  ...(['2.MD.A.1', '2.MD.A.2', '2.MD.A.3', '2.MD.A.4', '2.MD.B.5', '2.MD.B.6'] as const),
  ...(['2.MD.D.9', '2.MD.D.10', '3.MD.B.3', '3.MD.B.4', '5.G.A.2'] as const),
  ...(['K-ESS2-1', '2-LS2-1', '3-ESS2-1', '5-ESS1-2'] as const),
] as const;
export type StandardCode = (typeof standardCodes)[number];

/**
 * The standards that drawing a table as this graph serves: Common Core State Standards for
 * Mathematics (2010), measurement and data, and the Next Generation Science Standards (the
 * wording of 2.MD.D, 3.MD.B and 2-LS2-1 was checked, the others are from memory). Bars of one value
 * a day have no standard of their own: they serve comparing lengths, in grade 1 putting lengths in
 * order and measuring with equal units laid end to end. Those that a lesson serves beside its
 * drawing stand with its purpose. A line graph is a tool of science
 * below grade 5, and its code is that of the grade where mathematics first comes to it.
 * @example
 * standardsOf('bar-graph', { form: 'counts' }, 'grade-2', 'weather') // => ['2.MD.D.10', 'K-ESS2-1']
 * standardsOf('line-plot', { form: 'measures', unit: 'in', mark: '1/2 in' }, 'grade-3', 'other') // => ['3.MD.B.4']
 */
export const standardsOf = (
  graph: GraphKind,
  table: TableKind,
  stage: Stage,
  subject: Subject,
): readonly StandardCode[] => {
  const weather = subject === 'weather' ? weatherByStage[stage] : [];
  if (graph === 'line-graph') return subject === 'shadow' ? ['5-ESS1-2', '5.G.A.2'] : ['5.G.A.2'];
  if (table.form === 'measures') return [hasParts(table) ? '3.MD.B.4' : '2.MD.D.9'];
  if (table.form === 'counts') return [countsByStage[stage], ...weather];
  return [...weather, ...lengthsByStage[stage]];
};

/** What a graph is about, as far as a standard of science cares. */
export type Subject = 'weather' | 'shadow' | 'other';

/** What the table of a source is about. Not part of the public door. */
export const subjectOf = (source: TableSource, { quantity, kinds }: Investigation): Subject => {
  if (source === 'state-days' || source === 'specimen-readings') return 'other';
  if (source === 'weather-days' || quantity === 'rain') return 'weather';
  if (source === 'kind-days') {
    return weatherWords.some((word) => kinds.includes(word)) ? 'weather' : 'other';
  }
  return quantity === 'shadow' ? 'shadow' : 'other';
};

type TableKind =
  | Pick<MeasureTable, 'form' | 'unit' | 'mark'>
  | { readonly form: Exclude<GraphTable['form'], 'measures'> };

const hasParts = ({ unit, mark }: Pick<MeasureTable, 'unit' | 'mark'>): boolean =>
  unit === 'in' && markById(mark).exact < exactPerUnit(unit);

const countsByStage: Readonly<Record<Stage, StandardCode>> = {
  'grade-1': '1.MD.C.4',
  'grade-2': '2.MD.D.10',
  'grade-3': '3.MD.B.3',
};

const lengthsByStage: Readonly<Record<Stage, readonly StandardCode[]>> = {
  'grade-1': ['1.MD.A.1', '1.MD.A.2'],
  'grade-2': ['2.MD.A.4'],
  'grade-3': ['2.MD.A.4'],
};

const weatherByStage: Readonly<Record<Stage, readonly StandardCode[]>> = {
  'grade-1': ['K-ESS2-1'],
  'grade-2': ['K-ESS2-1'],
  'grade-3': ['3-ESS2-1'],
};
