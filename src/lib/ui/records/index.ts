export { default as BringInPage } from './BringInPage.svelte';
export { default as RecordsOnFirstPage } from './RecordsOnFirstPage.svelte';
export { default as RecordsPage } from './RecordsPage.svelte';
