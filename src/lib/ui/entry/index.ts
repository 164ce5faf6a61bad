export { ReadingDraft } from './reading-draft.svelte';
export { default as ReadingForm } from './ReadingForm.svelte';
export { default as StampRow } from './StampRow.svelte';
export { default as WhoWrites } from './WhoWrites.svelte';
