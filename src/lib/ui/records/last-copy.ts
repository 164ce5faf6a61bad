import type { EntryId, JournalEntry } from '#core/journal';
import type { DeviceMemory } from '#notebook';

/** The last backup file that was saved on this device, as the device remembers it. */
export interface LastCopy {
  readonly atMs: number;
  readonly lineCount: number;
  /** The first line of the notebook it was made of: another notebook's copy is none of this one. */
  readonly firstEntry: EntryId | null;
}

export function rememberCopy(
  memory: DeviceMemory,
  entries: readonly JournalEntry[],
  atMs: number,
): LastCopy {
  const copy = { atMs, lineCount: entries.length, firstEntry: entries[0]?.id ?? null };
  memory.write(memoryKey, JSON.stringify(copy));
  return copy;
}

/** What is remembered, or null: nothing, or nothing that can be read any more. */
export function readLastCopy(memory: DeviceMemory): LastCopy | null {
  try {
    const copy = JSON.parse(memory.read(memoryKey) ?? 'null') as Partial<LastCopy> | null;
    if (!Number.isSafeInteger(copy?.atMs) || !Number.isSafeInteger(copy?.lineCount)) return null;
    return { firstEntry: null, ...copy } as LastCopy;
  } catch {
    return null;
  }
}

/**
 * How many lines the notebook has beyond the copy, or null where the copy is of another notebook.
 * Lines are only ever added, so that the difference is what is new.
 */
export function linesSinceCopy(copy: LastCopy, entries: readonly JournalEntry[]): number | null {
  const isOfThisNotebook = entries.some((entry) => entry.id === copy.firstEntry);
  if (!isOfThisNotebook || entries.length < copy.lineCount) return null;
  return entries.length - copy.lineCount;
}

const memoryKey = 'last-copy';
