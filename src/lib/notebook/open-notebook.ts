import { openJournalStore, type OpenedStore } from '#store';
import { askToKeep } from './ask-to-keep';
import { deviceClock } from './clock';
import { DeviceMemory } from './device-memory';
import { NotebookState } from './notebook-state.svelte';
import { isVisitingSample, leaveSample } from './sample-visit';

export interface OpenedNotebook {
  readonly notebook: NotebookState;
  /** Why nothing will be kept when this window closes, or null. */
  readonly fallback: OpenedStore['fallback'];
  /** Whether this is the made-up notebook, opened to look around. */
  readonly isSample: boolean;
  /** Stops following other tabs and closes the store. */
  readonly stop: () => void;
}

/** Opens the family's notebook on this device, or the made-up one while somebody visits it. */
export async function openNotebook(fetchFile: typeof fetch): Promise<OpenedNotebook> {
  const sample = isVisitingSample() ? await fetchSample(fetchFile) : null;
  const { store, fallback } = sample ? { store: sample, fallback: null } : await openJournalStore();
  const memory = new DeviceMemory();
  const notebook = new NotebookState(store, deviceClock, memory, (entries) =>
    askToKeep(entries, store, memory),
  );
  const stop = await notebook.open();
  return { notebook, fallback, isSample: sample !== null, stop };
}

/** The sample's reader is loaded only by those who visit it. */
async function fetchSample(fetchFile: typeof fetch) {
  const { openSampleStore } = await import('./open-sample-store');
  const store = await openSampleStore(fetchFile);
  if (!store) leaveSample();
  return store;
}
