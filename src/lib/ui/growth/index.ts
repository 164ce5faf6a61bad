export { default as GrowthPage } from './GrowthPage.svelte';
