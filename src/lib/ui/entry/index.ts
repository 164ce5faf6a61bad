export { default as EntryExtras } from './EntryExtras.svelte';
export { default as QuestionBox } from './QuestionBox.svelte';
export { ReadingDraft } from './reading-draft.svelte';
export { default as ReadingForm } from './ReadingForm.svelte';
export { default as StampRow } from './StampRow.svelte';
