export { keepPersistent, readRoom, type Persistence, type Room } from '#store';
export { chooseSpecimen, openSpecimens } from './choose-specimen';
export { deviceClock, type Clock } from './clock';
export { DeviceMemory } from './device-memory';
export { provideNotebook, useNotebook } from './notebook-context';
export type { WritableDraft } from './entry-writer';
export { NotebookState } from './notebook-state.svelte';
export { openNotebook, type OpenedNotebook } from './open-notebook';
export { isVisitingSample, leaveSample, visitSample } from './sample-visit';
