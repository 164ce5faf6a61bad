export { default as EvidencePage } from './EvidencePage.svelte';
