import { isTallyTable, tallyTable, type ChildTally, type GraphTable } from '#core/graphs';
import { isDayState, stateWords } from '#ui/words';

/** A table as a child reads it beside the board: a name and a number, or why there is none. */
export interface TableLines {
  readonly caption: string;
  readonly head: readonly [name: string, value: string];
  readonly lines: readonly TableLine[];
  /** Whether the child made it by sorting: then its marks stand beside the numbers. */
  readonly isTally: boolean;
}

interface TableLine {
  readonly label: string;
  readonly value: string;
  /** How many marks it has in a tally. */
  readonly marks: number;
}

export function tableLines(table: GraphTable): TableLines {
  if (table.form === 'counts') {
    const lines = table.rows.map(({ label, count }) => ({
      ...{ label, value: String(count), marks: count },
    }));
    const isTally = isTallyTable(table);
    const caption = isTally ? 'Draw from your tally.' : drawFromIt;
    return { caption, head: ['Kind', table.counted], lines, isTally };
  }
  const head: TableLines['head'] = ['Day', `${table.measured} (${table.unit})`];
  const lines = linesOf(table).map((line) => ({ ...line, marks: 0 }));
  return { caption: drawFromIt, head, lines, isTally: false };
}

/** The rows of a tally as it stands, each kind with its marks. */
export const tallyRows = (
  tally: ChildTally,
): readonly { readonly label: string; readonly count: number }[] => tallyTable(tally, 'days').rows;

const drawFromIt = 'Draw from this table.';

const linesOf = (
  table: Exclude<GraphTable, { form: 'counts' }>,
): readonly Pick<TableLine, 'label' | 'value'>[] => {
  if (table.form === 'values') {
    return table.rows.map(({ label, text, exact, state }) => ({
      ...{ label, value: exact === null ? noNumber(state) : text },
    }));
  }
  const name = (series: number): string =>
    table.seriesNames.length > 1 ? ` (${table.seriesNames[series] ?? ''})` : '';
  if (table.form === 'times') {
    return table.rows.map(({ place, series, text, exact, state }) => ({
      label: (table.places[place] ?? '') + name(series),
      value: exact === null ? noNumber(state) : text,
    }));
  }
  return [
    ...table.values.map(({ label, text, series }) => ({
      label: label + name(series),
      value: text,
    })),
    ...table.unmeasured.map(({ label, state }) => ({ label, value: noNumber(state) })),
  ];
};

const noNumber = (state: string): string =>
  isDayState(state) ? stateWords[state].inLog : 'no number';

/** The names a child writes along the columns: of kinds, days, weeks or hours. */
export const namesOfTable = (table: GraphTable): readonly string[] => {
  if (table.form === 'times') return table.places;
  if (table.form === 'measures') return [];
  return [...new Set(table.rows.map(({ label }) => label))];
};

/** Whose marks there are to draw, where there is more than one. */
export const seriesOfTable = (table: GraphTable): readonly string[] =>
  table.form === 'measures' || table.form === 'times' ? table.seriesNames : [];
