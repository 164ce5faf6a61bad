export { default as TodayPage } from './TodayPage.svelte';
