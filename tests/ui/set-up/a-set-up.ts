import { render } from 'vitest-browser-svelte';
import type { JournalEntry, Quantity } from '#core/journal';
import { begun } from '../../core/journal/entries';
import { aNotebook } from '../records/a-notebook';
import SetUpOf from './SetUpOf.svelte';

/** The set-up sheets of a notebook of one child and one investigation, on Monday 9 March 2026. */
export async function showSetUp(
  quantity: Quantity = 'plant-height',
  more: readonly JournalEntry[] = [],
) {
  const notebook = await aNotebook();
  const entries = begun.map((entry) =>
    entry.kind === 'investigation-begun' ? { ...entry, quantity } : entry,
  );
  await notebook.bringIn([...entries, ...more]);
  const screen = await render(SetUpOf, { notebook });
  const writtenOf = (kind: JournalEntry['kind']) =>
    notebook.entries.filter((entry) => entry.kind === kind);
  return { notebook, screen, writtenOf };
}
