import type { GraphTable } from '#core/graphs';
import { exactPerUnit } from '#core/measure';

/** A row of a table as it is said in a plan; the number is null where there is none. */
export interface ToldRow {
  readonly label: string;
  readonly text: string;
  readonly number: number | null;
}

/** The rows of a table, in its order; of several logs those of one after the other. */
export const toldRows = (table: GraphTable): readonly ToldRow[] => {
  if (table.form === 'counts') {
    return table.rows.map(({ label, count }) => ({ label, text: String(count), number: count }));
  }
  if (table.form === 'times') {
    return table.rows.map(({ place, text, exact, unit }) => ({
      ...{ label: table.places[place] as string, text },
      number: exact === null ? null : exact / exactPerUnit(unit),
    }));
  }
  const rows = table.form === 'values' ? table.rows : table.values;
  return rows.map(({ label, text, exact }) => ({
    ...{ label, text },
    number: exact === null ? null : exact / exactPerUnit(table.unit),
  }));
};

/** What a number of the table is followed by: its unit, or what is counted. */
export const unitOf = (table: GraphTable, number: number | null = null): string => {
  if (table.form === 'counts') return table.counted;
  const names = unitNames[table.unit];
  return names ? names[number === 1 ? 0 : 1] : table.unit;
};

const unitNames: Readonly<Record<string, readonly [one: string, more: string] | undefined>> = {
  ...{ cm: ['centimetre', 'centimetres'], mm: ['millimetre', 'millimetres'] },
  ...{ in: ['inch', 'inches'], m: ['metre', 'metres'], ft: ['foot', 'feet'] },
  ...{ yd: ['yard', 'yards'], count: ['', ''] },
};

/** `a, b and c`. */
export const listed = (texts: readonly string[]): string =>
  texts.length < 2 ? texts.join('') : `${texts.slice(0, -1).join(', ')} and ${texts.at(-1)}`;
