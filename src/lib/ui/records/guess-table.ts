import { guessColumns, specimensInTable } from '#core/exchange';
import type { ColumnGuess, ColumnPlaces, CsvRow, Separator } from '#core/exchange';

/**
 * The first guess of how a table is read. Of a long table an even sample is looked at: a row that
 * is written otherwise shows in the preview. Whose rows it holds is read from all of it.
 */
export function guessTable(
  rows: readonly CsvRow[],
  separator: Separator,
  chosen?: ColumnPlaces,
): ColumnGuess {
  const step = Math.ceil(rows.length / mostLookedAt);
  const sample = step > 1 ? rows.filter((_, index) => index % step === 0) : rows;
  const guess = guessColumns(sample, separator, chosen);
  if (step === 1) return guess;
  const [first, second] = specimensInTable(rows, guess.mapping);
  if (!first || !second || guess.questions.includes('which-specimen')) return guess;
  const only = { investigation: first.investigation, specimen: first.specimen };
  return {
    mapping: { ...guess.mapping, only },
    questions: [...guess.questions, 'which-specimen'],
  };
}

const mostLookedAt = 5000;
