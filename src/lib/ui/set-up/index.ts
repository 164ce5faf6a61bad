export { default as InvestigationSheet } from './InvestigationSheet.svelte';
export { default as PeopleSheet } from './PeopleSheet.svelte';
