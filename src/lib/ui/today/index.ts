export { default as SpecimenStrips } from './SpecimenStrips.svelte';
export { default as TodayPage } from './TodayPage.svelte';
