import { describe, expect, test, vi } from 'vitest';
import { newMemoryShelf } from '#store';
import { PutAwayState } from '../../../src/lib/ui/records/put-away-state.svelte';
import { begun } from '../../core/journal/entries';
import { aNotebook } from './a-notebook';

const putAwayNotebook = async () => {
  const shelf = newMemoryShelf();
  const notebook = await aNotebook(shelf);
  await notebook.bringIn(begun);
  const putAway = new PutAwayState(notebook);
  await putAway.putAway();
  return { shelf, notebook, putAway };
};

describe('a notebook that is put away', () => {
  test('is out of sight, and says since when and how much it is', async () => {
    const { notebook, putAway } = await putAwayNotebook();
    expect(notebook.entries).toEqual([]);
    expect(putAway.mark).toEqual({ atMs: Date.UTC(2026, 2, 9, 8, 30), entryCount: 4 });
    expect(putAway.done).toBe('put-away');
  });

  test('comes back as it was, after a reload too', async () => {
    const { shelf } = await putAwayNotebook();
    const later = await aNotebook(shelf);
    const putAway = new PutAwayState(later);
    await putAway.putBack();
    expect(later.entries).toEqual(begun);
    expect(putAway.mark).toBeNull();
    expect(putAway.done).toBe('put-back');
  });

  test('can be erased for good, and what the device remembers goes with it', async () => {
    const { shelf, notebook, putAway } = await putAwayNotebook();
    notebook.memory.write('specimen', 'bean');
    await putAway.erase();
    expect(putAway.done).toBe('erased');
    expect(putAway.mark).toBeNull();
    expect(notebook.memory.read('specimen')).toBe('');
    const later = await aNotebook(shelf);
    await new PutAwayState(later).putBack();
    expect(later.entries).toEqual([]);
  });

  test('says nothing of a deed that another window did first', async () => {
    const { shelf, putAway } = await putAwayNotebook();
    await new PutAwayState(await aNotebook(shelf)).erase();
    await putAway.putBack();
    expect(putAway.done).toBeNull();
    expect(putAway.mark).toBeNull();
  });

  test('another window looks again when it comes back there', async () => {
    const { shelf, putAway } = await putAwayNotebook();
    const stop = putAway.follow();
    await new PutAwayState(await aNotebook(shelf)).putBack();
    await vi.waitFor(() => expect(putAway.mark).toBeNull());
    expect(putAway.done).toBeNull();
    stop();
  });
});
