import { likelyDayOrder, readDayText } from '#core/calendar';
import type { Unit } from '#core/measure';
import { columnFacts, looksLikeDay } from './column-facts';
import type { CsvRow } from './csv-row';
import { guessDecimal } from './guess-decimal';
import { guessFields } from './guess-fields';
import type { DaysWritten, ImportMapping } from './import-mapping';
import { ownMapping } from './own-columns';
import type { Separator } from './separator';
import { specimensInTable } from './specimens-in-table';
import { unitInHeading, unitOfText } from './unit-in-words';

export interface ColumnGuess {
  readonly mapping: ImportMapping;
  /** What the table leaves open, in the order to ask it. */
  readonly questions: readonly ImportQuestion[];
}

/** Which column holds what. */
export type ColumnPlaces = Pick<ImportMapping, 'columnByField' | 'hasHeading'>;

export type ImportQuestion =
  /** No column looks like days, or like numbers, states or words. */
  | 'which-column-is-the-day'
  | 'which-column-is-the-number'
  /** Some dates are a day either way round. */
  | 'day-order'
  /** Days are numbered, and the date of one of them is needed. */
  | 'date-of-a-day'
  | 'unit'
  | 'decimal'
  /** The table holds several specimens; the first of them was taken. */
  | 'which-specimen';

/**
 * A first guess of what a table's columns hold and how its days and numbers are written, for a
 * person to look over, with the questions it leaves open. Our own table leaves none but which
 * specimen. What a column holds is guessed from its heading and the first 200 rows; the order of
 * the dates and the decimal sign from all rows given.
 *
 * @param chosen where a person has chosen the columns: then only the rest is guessed
 * @example
 * guessColumns(readCsv('date,precipitation_mm\n2012-01-02,10.9\n').value.rows).mapping.unit // => 'mm'
 * guessColumns(readCsv('day,cm\n3/4/2026,5\n').value.rows).questions // => ['day-order']
 * guessColumns(readCsv('day,leaf_mm,cm\n2026-03-02,41,5\n').value.rows, ',', { columnByField: { day: 0, number: 1 }, hasHeading: true }).mapping.unit // => 'mm'
 */
export function guessColumns(
  rows: readonly CsvRow[],
  separator: Separator = ',',
  chosen?: ColumnPlaces,
): ColumnGuess {
  const own = chosen ? null : ownMapping(rows[0]?.fields ?? []);
  const columns = chosen ?? own ?? guessPlaces(rows);
  const { day, number, state, word, unit: unitColumn } = columns.columnByField;
  const body = columns.hasHeading ? rows.slice(1) : rows;
  const dayCells = filledCells(body, day);
  const numberCells = filledCells(body, number);
  const days: DaysWritten =
    dayCells.length === 0 || dayCells.some(looksLikeDay)
      ? { as: 'date', order: dayOrder(dayCells) }
      : { as: 'number', anchor: null };
  const { decimal, isOpen } = guessDecimal(own ? [] : numberCells, own ? ',' : separator);
  const heading = columns.hasHeading ? rows[0]?.fields[number ?? -1] : undefined;
  const unit = own ? null : (unitInHeading(heading ?? '') ?? unitInCells(numberCells));
  const mapping = { ...guessedOtherwise, ...columns, days, decimal, unit };
  const specimens = specimensInTable(rows, mapping);
  const [first] = specimens;
  // Notes on no specimen stand in our own table too, and are nobody's log.
  const isChosen = specimens.length > 1 || own !== null;
  const only =
    first && isChosen ? { investigation: first.investigation, specimen: first.specimen } : null;
  const asked: readonly (readonly [ImportQuestion, boolean])[] = [
    ['which-column-is-the-day', day === undefined],
    [
      'which-column-is-the-number',
      number === undefined && state === undefined && word === undefined,
    ],
    ['day-order', days.as === 'date' && days.order === null && dayCells.some(isEitherWay)],
    ['date-of-a-day', days.as === 'number'],
    ['unit', number !== undefined && unit === null && unitColumn === undefined],
    ['decimal', isOpen],
    ['which-specimen', specimens.length > 1],
  ];
  const questions = asked.filter(([, isAsked]) => isAsked).map(([question]) => question);
  return { mapping: { ...mapping, only }, questions };
}

const guessedOtherwise = {
  mark: null,
  blankMeans: 'missed',
  zeroMeans: 'zero',
  only: null,
  isOwn: false,
} as const;

const sampleLength = 200;

/** Which column holds what, in a table that is not our own. */
function guessPlaces(rows: readonly CsvRow[]): ColumnPlaces {
  const first = rows[0]?.fields ?? [];
  const hasHeading = !first.some(
    (cell) => looksLikeDay(cell) || /^[-+]?[\d.,]+$/.test(cell.trim()),
  );
  const sample = rows.slice(hasHeading ? 1 : 0, sampleLength);
  const facts = first.map((cell, column) =>
    columnFacts(
      column,
      hasHeading ? cell : null,
      sample.map(({ fields }) => fields[column] ?? ''),
    ),
  );
  return { columnByField: guessFields(facts), hasHeading };
}

const filledCells = (rows: readonly CsvRow[], column: number | undefined): readonly string[] =>
  column === undefined
    ? []
    : rows.map(({ fields }) => (fields[column] ?? '').trim()).filter((cell) => cell !== '');

/** Only dates with the year last can be written in two orders; most tables have none to look at. */
function dayOrder(cells: readonly string[]): ReturnType<typeof orderOrNull> {
  return orderOrNull(likelyDayOrder(cells.filter((cell) => /^\d{1,2}\D/.test(cell))));
}

const orderOrNull = (order: ReturnType<typeof likelyDayOrder>) =>
  order === 'day-first' || order === 'month-first' ? order : null;

function isEitherWay(cell: string): boolean {
  const read = readDayText(cell);
  return !read.ok && read.error.kind === 'ambiguous-order';
}

/** The unit that the first number with a unit names. */
function unitInCells(cells: readonly string[]): Unit | null {
  for (const cell of cells) {
    const behind = /\d\s*(\p{L}+\.?|["\u2033])$/u.exec(cell)?.[1];
    const unit = behind === undefined ? null : unitOfText(behind);
    if (unit !== null) return unit;
  }
  return null;
}
