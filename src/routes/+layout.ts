import { deviceClock, DeviceMemory, NotebookState } from '#notebook';
import { openJournalStore } from '#store';

// The notebook lives in the browser: there is nothing for a server to draw.
export const ssr = false;
export const prerender = true;

export const load = async () => {
  const { store, fallback } = await openJournalStore();
  const notebook = new NotebookState(store, deviceClock, new DeviceMemory());
  const stop = await notebook.open();
  return { notebook, fallback, stop };
};
