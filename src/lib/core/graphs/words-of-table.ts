import type { GraphTable } from './graph-table';
import { unitWords } from './unit-words';

/** Words of which a title says at least one, in small letters. Not part of the public door. */
export const titleWordsOf = (table: GraphTable): readonly string[] => {
  if (table.form === 'counts') {
    const labels = table.rows.map(({ label }) => label.toLowerCase());
    return [...wordsOfCounted(table.counted), 'how many', ...labels];
  }
  return [...wordsOfMeasured(table.measured), ...unitWords(table.unit)];
};

/**
 * Words of which the label of the number side says at least one. Along the number line of a line
 * plot that is the unit itself: five what? Not part of the public door.
 */
export const sideWordsOf = (table: GraphTable): readonly string[] => {
  if (table.form === 'counts') return [...wordsOfCounted(table.counted), 'how many', 'number'];
  if (table.form === 'measures') return unitWords(table.unit);
  return [...unitWords(table.unit), ...wordsOfMeasured(table.measured)];
};

/** `days` and also `day`. */
const wordsOfCounted = (counted: string): readonly string[] => {
  const word = counted.toLowerCase();
  return word.endsWith('s') ? [word, word.slice(0, -1)] : [word];
};

const wordsOfMeasured = (measured: string): readonly string[] => {
  const word = measured.toLowerCase();
  return [word, ...(alikeByMeasured[word] ?? [])];
};

/** Other words that say the same, as children do. */
const alikeByMeasured: Readonly<Record<string, readonly string[]>> = {
  height: ['heights', 'tall', 'taller', 'high', 'grew', 'grow', 'grows', 'growth'],
  growth: ['grew', 'grow', 'grows', 'more', 'taller'],
  rain: ['rained', 'rainfall', 'water'],
  shadow: ['shadows', 'long', 'longer', 'length'],
  length: ['lengths', 'long', 'longer'],
};
