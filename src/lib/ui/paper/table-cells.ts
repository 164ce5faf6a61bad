import type { GraphTable } from '#core/graphs';
import { isDayState, stateWords } from '#ui/words';

/** A table in words: the first cell of a row is its name. */
export interface TableCells {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** What stands in each cell of the table a graph is drawn from. */
export const tableCells = (table: GraphTable): TableCells => {
  switch (table.form) {
    case 'counts':
      return {
        head: ['Kind', `How many ${table.counted}`],
        rows: table.rows.map(({ label, count }) => [label, String(count)]),
      };
    case 'values':
      return {
        head: ['When', `${table.measured} (${table.unit})`],
        rows: table.rows.map((row) => [row.label, numberOrWhy(row)]),
      };
    case 'measures':
      return measureCells(table);
    case 'times':
      return timeCells(table);
  }
};

const measureCells = (table: Extract<GraphTable, { form: 'measures' }>): TableCells => {
  const isMixed = table.seriesNames.length > 1;
  const whose = (series: number): readonly string[] =>
    isMixed ? [table.seriesNames[series] ?? ''] : [];
  // A day that both plants were missed on is told once: the table does not say whose it was.
  const told = table.unmeasured.filter(
    ({ label, state }, index, all) =>
      all.findIndex((each) => each.label === label && each.state === state) === index,
  );
  return {
    head: ['Which', ...(isMixed ? ['Whose'] : []), `${table.measured} (${table.unit})`],
    rows: [
      ...table.values.map(({ label, series, text }) => [label, ...whose(series), text]),
      ...told.map(({ label, state }) => [
        ...[label, ...(isMixed ? [''] : [])],
        state === 'blank' ? 'no number' : whyNot(state),
      ]),
    ],
  };
};

const timeCells = (table: Extract<GraphTable, { form: 'times' }>): TableCells => {
  const isOne = table.seriesNames.length === 1;
  return {
    head: [
      'When',
      ...(isOne
        ? [`${table.measured} (${table.unit})`]
        : table.seriesNames.map((name) => `${name} (${table.unit})`)),
    ],
    rows: table.places.map((label, place) => [
      label,
      ...table.seriesNames.map((_, series) => {
        const row = table.rows.find((each) => each.place === place && each.series === series);
        return row ? numberOrWhy(row) : whyNot('blank');
      }),
    ]),
  };
};

const numberOrWhy = (row: { exact: number | null; text: string; state: string }): string =>
  row.exact === null ? whyNot(row.state) : row.text;

/** As in the log, but only as far as the first pause: a cell of a table is short. */
const whyNot = (state: string): string =>
  isDayState(state) ? (stateWords[state].inLog.split(':')[0] ?? '') : '–';
