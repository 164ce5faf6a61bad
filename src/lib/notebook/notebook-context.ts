import { createContext } from 'svelte';
import type { NotebookState } from './notebook-state.svelte';

/** The layout sets the notebook once; every page and component below reads it. */
export const [useNotebook, provideNotebook] = createContext<NotebookState>();
