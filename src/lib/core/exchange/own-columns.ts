import { logColumns, type LogHeading } from './columns';
import type { ImportField, ImportMapping } from './import-mapping';

/**
 * How our own table is read, or null when these are not its headings. Its columns may stand in
 * any order, and others among them: a spreadsheet may have been there since.
 */
export function ownMapping(heading: readonly string[]): OwnPlaces | null {
  const places = heading.map((cell) => cell.trim().toLowerCase());
  if (logColumns.some((column) => !places.includes(column.heading))) return null;
  const columnByField = Object.fromEntries(
    Object.entries(headingByField).map(([field, name]) => [field, places.indexOf(name)]),
  );
  return { columnByField, hasHeading: true, isOwn: true };
}

const headingByField: Readonly<Record<ImportField, LogHeading>> = {
  day: 'day',
  time: 'time',
  number: 'reading',
  unit: 'unit',
  mark: 'mark',
  state: 'state',
  word: 'word',
  specimen: 'specimen',
  investigation: 'investigation',
  note: 'note',
  why: 'why',
  'span-days': 'span days',
  leaves: 'leaves',
  weather: 'weather',
  line: 'line',
  cm: 'cm',
  value: 'value',
  'all-readings': 'all readings',
};

type OwnPlaces = Pick<ImportMapping, 'columnByField' | 'hasHeading' | 'isOwn'>;
