import { nanometresByUnit, type LengthUnit } from '#core/measure';
import type { Drawing } from './drawing';
import type { GraphTable } from './graph-table';
import { unitWords } from './unit-words';

/**
 * Whether pictures were used for what was measured or for days, and not for how many of each kind
 * (P13): the table is not one of counts, or the rows are named by days though the table's are not,
 * or the key says how long one picture is. Not part of the public door.
 */
export const areMeasuredPictures = (table: GraphTable, { places, key, side }: Drawing): boolean => {
  if (table.form !== 'counts') return true;
  const labels = table.rows.map(({ label }) => label.trim().toLowerCase());
  const names = places.map(({ text }) => text.trim().toLowerCase()).filter((name) => name !== '');
  const others = names.filter((name) => !labels.includes(name));
  const areDays = names.every(isDay) && others.length > 1 && !labels.every(isDay);
  return areDays || [key?.text ?? '', side.label].some(saysLength);
};

const isDay = (name: string): boolean =>
  /^(mon|tue|wed|thu|fri|sat|sun)[a-z]*\b|^(day|week)\s*\d|^\d+([./-]\d+)*$/.test(name) ||
  /^\d{1,2} [a-z]{3,}|^[a-z]{3,} \d{1,2}$/.test(name);

/** `in` alone is a small word, and one letter says too little. */
const saysLength = (text: string): boolean => {
  const said: readonly string[] = text.toLowerCase().match(/\p{L}+/gu) ?? [];
  return (Object.keys(nanometresByUnit) as LengthUnit[])
    .flatMap(unitWords)
    .some((word) => word.length > 1 && word !== 'in' && said.includes(word));
};
