import type { GraphTable } from '#core/graphs';
import { isDayState, stateWords } from '#ui/words';

/** A table as it stands on paper: the first cell of a row is its name. */
export interface PaperTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** How wide each column is on paper, in millimetres. */
  readonly columnsMm: readonly number[];
  readonly rowMm: number;
  readonly headMm: number;
}

/** The table a graph is drawn from, ready to be laid out. */
export function paperTable(table: GraphTable): PaperTable {
  const { head, rows } = cellsOf(table);
  const columnsMm = head.map((_, column) =>
    column === 0
      ? widthOf(rows, column, { least: 20, most: 48 })
      : widthOf(rows, column, { least: 24, most: 40 }),
  );
  const wraps = rows.some((row) =>
    row.some((cell, column) => cell.length * letterMm + paddingMm > columnsMm[column]!),
  );
  return { head, rows, columnsMm, rowMm: wraps ? 11 : 6.2, headMm: 12 };
}

export const blockMm = ({ columnsMm }: PaperTable): number =>
  columnsMm.reduce((sum, each) => sum + each, 0);

/** The rows in so many blocks, as even as can be, in order down and then across. */
export const tableBlocks = (
  { rows }: PaperTable,
  blocks: number,
): readonly PaperTable['rows'][] => {
  const down = Math.max(1, Math.ceil(rows.length / Math.max(1, blocks)));
  return Array.from({ length: Math.ceil(rows.length / down) }, (_, block) =>
    rows.slice(block * down, (block + 1) * down),
  );
};

const cellsOf = (table: GraphTable): Pick<PaperTable, 'head' | 'rows'> => {
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

const measureCells = (
  table: Extract<GraphTable, { form: 'measures' }>,
): Pick<PaperTable, 'head' | 'rows'> => {
  const isMixed = table.seriesNames.length > 1;
  const whose = (series: number): readonly string[] =>
    isMixed ? [table.seriesNames[series] ?? ''] : [];
  return {
    head: ['Which', ...(isMixed ? ['Whose'] : []), `${table.measured} (${table.unit})`],
    rows: [
      ...table.values.map(({ label, series, text }) => [label, ...whose(series), text]),
      ...table.unmeasured
        .filter(isTold)
        .map(({ label, state }) => [...[label, ...(isMixed ? [''] : []), whyNot(state)]]),
    ],
  };
};

/** Days on which somebody meant to measure; before a plant is up there is nothing to mark. */
const isTold = ({ state }: { readonly state: string }): boolean =>
  state !== 'blank' && state !== 'not-up-yet';

const timeCells = (
  table: Extract<GraphTable, { form: 'times' }>,
): Pick<PaperTable, 'head' | 'rows'> => {
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

/** Letters of 11 points are about this wide. */
const letterMm = 2.4;
const paddingMm = 4;

const widthOf = (
  rows: PaperTable['rows'],
  column: number,
  { least, most }: { readonly least: number; readonly most: number },
): number => {
  const longest = Math.max(0, ...rows.map((row) => (row[column] ?? '').length));
  return Math.min(most, Math.max(least, longest * letterMm + paddingMm));
};
