import type { GraphTable, MeasureTable } from './graph-table';
import { unitWords } from './unit-words';
import type { Drawing } from './drawing';

/** What a careful child would write on a graph. None of these is part of the public door. */
export const titleOf = (table: GraphTable): string =>
  table.form === 'counts'
    ? `How many ${table.counted} of each kind`
    : `Our ${table.measured} in ${unitText(table)}`;

export const sideLabelOf = (table: GraphTable): string =>
  table.form === 'counts' ? `How many ${table.counted}` : `${table.measured} in ${unitText(table)}`;

/** Along a number line: the unit is what matters. */
export const bottomLabelOf = (table: MeasureTable): string =>
  `${table.measured} in ${unitText(table)}`;

export const keyText = (table: { readonly counted: string }, value: number): string =>
  `${value} ${value === 1 ? table.counted.replace(/s$/, '') : table.counted}`;

/** Nobody asks whose mark it is where there is only one. */
export const seriesKeyOf = (names: readonly string[]): Drawing['seriesKey'] =>
  names.length > 1 ? names.map((text, series) => ({ series, text })) : [];

const unitText = (table: Exclude<GraphTable, { form: 'counts' }>): string =>
  unitWords(table.unit)[0] ?? 'ones';
