export { default as SpecimenStrips } from './SpecimenStrips.svelte';
export { stateWords, type StripDay, type StripState, type StripVariant } from './strip-day';
export { default as StripRow } from './StripRow.svelte';
export { stripSentence } from './strip-sentence';
