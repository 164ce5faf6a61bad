import type { JournalEntry } from './decode-entry';

/**
 * The one order of all entries, the same on every device: by stamp, then by device, then by id.
 * @example
 * compareEntries({ at: 'a', device: 'x', id: '1' }, { at: 'a', device: 'x', id: '2' }) // => -1
 */
export function compareEntries(left: OrderKey, right: OrderKey): number {
  if (left.at !== right.at) return left.at < right.at ? -1 : 1;
  if (left.device !== right.device) return left.device < right.device ? -1 : 1;
  if (left.id !== right.id) return left.id < right.id ? -1 : 1;
  return 0;
}

/**
 * Two journals as one: their union, each entry once, in order. Where two entries carry one id
 * but differ (a damaged copy), the one that sorts first as text is kept, on every device alike.
 * @example
 * mergeEntries([], []) // => []
 */
export function mergeEntries(
  ...journals: readonly (readonly JournalEntry[])[]
): readonly JournalEntry[] {
  const entryById = new Map<string, JournalEntry>();
  for (const entry of journals.flat()) {
    const known = entryById.get(entry.id);
    if (known === undefined) entryById.set(entry.id, entry);
    else if (known !== entry && comesFirst(entry, known)) entryById.set(entry.id, entry);
  }
  const entries = [...entryById.values()];
  return isInOrder(entries) ? entries : entries.sort(compareEntries);
}

const isInOrder = (entries: readonly JournalEntry[]): boolean =>
  entries.every((entry, index) => index === 0 || compareEntries(entries[index - 1]!, entry) <= 0);

const comesFirst = (entry: JournalEntry, known: JournalEntry): boolean =>
  canonicalText(entry) < canonicalText(known);

/** One text for one value, whatever order its fields were written in. */
function canonicalText(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalText).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  const fields = Object.entries(value)
    .filter(([, field]) => field !== undefined)
    .sort(([left], [right]) => (left < right ? -1 : 1))
    .map(([key, field]) => `${JSON.stringify(key)}:${canonicalText(field)}`);
  return `{${fields.join(',')}}`;
}

type OrderKey = Pick<JournalEntry, 'at' | 'device' | 'id'>;
