export { default as EntryExtras } from './EntryExtras.svelte';
