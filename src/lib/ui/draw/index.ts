export { default as DrawDesk } from './DrawDesk.svelte';
export { default as DrawPage } from './DrawPage.svelte';
