import { NotebookState, type Clock, type DeviceMemory } from '#notebook';
import { newMemoryShelf, openMemoryJournalStore } from '#store';

/** Half past eight in the morning of Monday 9 March 2026, and a chance that repeats itself. */
export const fixedClock = (): Clock => {
  let count = 0;
  return {
    nowMs: () => Date.UTC(2026, 2, 9, 8, 30),
    timeZone: () => 'UTC',
    randomBytes: (length) => {
      count += 1;
      return Uint8Array.from({ length }, (_, place) =>
        place < 4 ? 0 : count >> (8 * (place - 4)),
      );
    },
  };
};

/** What a device remembers, without a device. */
export function memoryOf(): DeviceMemory {
  const kept = new Map<string, string>();
  return {
    read: (key: string) => kept.get(key) ?? null,
    write: (key: string, value: string) => void kept.set(key, value),
  } as DeviceMemory;
}

/** An open notebook in memory; given a shelf, another window on the same journal. */
export async function aNotebook(shelf = newMemoryShelf()): Promise<NotebookState> {
  const notebook = new NotebookState(openMemoryJournalStore(shelf), fixedClock(), memoryOf());
  await notebook.open();
  return notebook;
}
