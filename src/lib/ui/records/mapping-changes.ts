import type { ColumnGuess, ImportField, ImportMapping, ImportQuestion } from '#core/exchange';
import type { Quantity } from '#core/journal';
import { guessTable } from './guess-table';
import type { ReadTable } from './table-source.svelte';

/** Puts a field into a column, or into none, and guesses anew what hangs on that column. */
export function changeColumns(
  mapping: ImportMapping,
  change: { readonly field: ImportField; readonly column: number | undefined } | null,
  { rows, separator }: Pick<ReadTable, 'rows' | 'separator'>,
): ColumnGuess {
  const columnByField = change ? moved(mapping.columnByField, change) : mapping.columnByField;
  const { hasHeading } = mapping;
  const guess = guessTable(rows, separator, { columnByField, hasHeading });
  const { days, decimal, unit, only } = guess.mapping;
  const changed = { ...mapping, columnByField };
  switch (change?.field) {
    case 'day':
      return { ...guess, mapping: { ...changed, days } };
    case 'number':
      return { ...guess, mapping: { ...changed, decimal, unit: unit ?? mapping.unit } };
    case 'specimen':
    case 'investigation':
      return { ...guess, mapping: { ...changed, only } };
    default:
      return { ...guess, mapping: changed };
  }
}

function moved(
  columnByField: ImportMapping['columnByField'],
  { field, column }: { readonly field: ImportField; readonly column: number | undefined },
): ImportMapping['columnByField'] {
  const { [field]: _, ...others } = columnByField;
  return column === undefined ? others : { ...others, [field]: column };
}

/**
 * The table as it is read into a log of this quantity: in a log of words its numbers are not
 * looked at, and the other way round. Where no column says anything about a day, blanks must not
 * turn every row into a missed day.
 */
export function mappingFor(mapping: ImportMapping, quantity: Quantity): ImportMapping {
  if (mapping.isOwn) return mapping;
  const { number, word, ...others } = mapping.columnByField;
  const isKind = quantity === 'daily-kind';
  const column = isKind ? word : number;
  if (column === undefined) {
    const blankMeans = others.state === undefined ? 'nothing' : mapping.blankMeans;
    return { ...mapping, columnByField: others, blankMeans };
  }
  return { ...mapping, columnByField: { ...others, [isKind ? 'word' : 'number']: column } };
}

/** What is to be asked about the table before it goes into a log of this quantity. */
export function questionsFor(
  asked: readonly ImportQuestion[],
  mapping: ImportMapping,
  quantity: Quantity,
): readonly ImportQuestion[] {
  const { number, word, state } = mappingFor(mapping, quantity).columnByField;
  const isOpen = number === undefined && word === undefined && state === undefined;
  const others = asked.filter((question) => question !== 'which-column-is-the-number');
  const forNumbers: readonly ImportQuestion[] = ['unit', 'decimal'];
  return [
    ...(isOpen && !mapping.isOwn ? (['which-column-is-the-number'] as const) : []),
    ...others.filter((question) => quantity !== 'daily-kind' || !forNumbers.includes(question)),
  ];
}

/** Whether a question has its answer; a decimal sign and a specimen have a first one from the start. */
export function isAnswered(question: ImportQuestion, { days, unit }: ImportMapping): boolean {
  switch (question) {
    case 'day-order':
      return days.as === 'date' && days.order !== null;
    case 'date-of-a-day':
      return days.as === 'number' && days.anchor !== null;
    case 'unit':
      return unit !== null;
    case 'decimal':
    case 'which-specimen':
      return true;
    default:
      return false;
  }
}

/** A plant of height 0 is most often not up yet; rain has 0. */
export const zeroMeansFor = (quantity: Quantity): ImportMapping['zeroMeans'] =>
  quantity === 'plant-height' ? 'not-up-yet' : 'zero';
