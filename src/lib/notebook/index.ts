export { chooseSpecimen, openSpecimens } from './choose-specimen';
export { deviceClock, type Clock } from './clock';
export { DeviceMemory } from './device-memory';
export { provideNotebook, useNotebook } from './notebook-context';
export { NotebookState } from './notebook-state.svelte';
