export { cautionsHere, type CautionHere } from './cautions-here';
export { default as HelpersSheet } from './HelpersSheet.svelte';
export { default as InvestigationSheet } from './InvestigationSheet.svelte';
export { default as PeopleSheet } from './PeopleSheet.svelte';
export { default as RulerSheet } from './RulerSheet.svelte';
export { printCards } from './set-up-words';
