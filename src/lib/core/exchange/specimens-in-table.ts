import type { CsvRow } from './csv-row';
import { cellOf } from './import-cell';
import type { ImportMapping, SpecimenName } from './import-mapping';

/**
 * Whose rows a table holds, in the order they first come up, with how many rows each has. Rows
 * that name no specimen (notes on a whole investigation) are counted for none. A table with no
 * column for names holds one specimen without one: the list is empty.
 * @example
 * specimensInTable(readCsv('plant,day,cm\nBean A,2026-03-02,3\n').value.rows, guessColumns(readCsv('plant,day,cm\nBean A,2026-03-02,3\n').value.rows).mapping) // => [{ investigation: '', specimen: 'Bean A', rowCount: 1 }]
 */
export function specimensInTable(
  rows: readonly CsvRow[],
  mapping: ImportMapping,
): readonly (SpecimenName & { readonly rowCount: number })[] {
  if (mapping.columnByField.specimen === undefined) return [];
  const countByName = new Map<string, SpecimenName & { rowCount: number }>();
  for (const row of mapping.hasHeading ? rows.slice(1) : rows) {
    const cell = cellOf(row, mapping);
    const specimen = cell('specimen');
    const investigation = cell('investigation');
    if (specimen === '') continue;
    const key = JSON.stringify([investigation, specimen]);
    const known = countByName.get(key);
    if (known) known.rowCount += 1;
    else countByName.set(key, { investigation, specimen, rowCount: 1 });
  }
  return [...countByName.values()];
}
