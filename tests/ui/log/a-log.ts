import '#ui/look';
import { render } from 'vitest-browser-svelte';
import { civilDay } from '#core/calendar';
import { foldEntries, type Entry, type JournalEntry } from '#core/journal';
import { DeviceMemory, NotebookState, type Clock } from '#notebook';
import { openMemoryJournalStore, type JournalStore } from '#store';
import { bean, begun, heights, child, written } from '../../core/journal/entries';
import LogOf from './LogOf.svelte';

/** Friday 13 March 2026, eight in the morning; the bean was sown on Monday 2 March. */
export const today = civilDay('2026-03-13');
export const yesterday = civilDay('2026-03-12');

const clock: Clock = {
  nowMs: () => Date.UTC(2026, 2, 13, 8),
  timeZone: () => 'UTC',
  randomBytes: (count) => crypto.getRandomValues(new Uint8Array(count)),
};

/** The page of the bean's log as it stands after these entries. */
export async function showLog(
  entries: readonly JournalEntry[],
  store: JournalStore = openMemoryJournalStore(),
) {
  localStorage.clear();
  await store.append([...begun, ...entries]);
  const notebook = new NotebookState(store, clock, new DeviceMemory());
  await notebook.open();
  notebook.chooseAuthor(child);
  const screen = await render(LogOf, { notebook, specimen: bean });
  const before = notebook.entries.length;
  /** What the page has written since it was opened, as the store keeps it. */
  const writtenSince = async (): Promise<readonly Entry[]> => {
    const kept = await store.readAll();
    return kept.ok ? (kept.value.entries.slice(before) as Entry[]) : [];
  };
  const readings = () => foldEntries(notebook.entries).logBySpecimen.get(bean)?.readings ?? [];
  return { screen, notebook, writtenSince, readings };
}

export const changedTo = (
  to: Extract<Entry, { kind: 'investigation-changed' }>['to'],
): JournalEntry => written(5, { kind: 'investigation-changed', investigation: heights, to });

export const note = (number: number, day: string, text: string): JournalEntry =>
  written(number, {
    ...{ kind: 'note-written', specimen: bean, investigation: heights },
    ...{ day: civilDay(day), text },
  });
