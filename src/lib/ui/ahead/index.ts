export { default as AheadPage } from './AheadPage.svelte';
