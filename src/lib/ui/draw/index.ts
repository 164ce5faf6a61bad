export { default as DrawDesk } from './DrawDesk.svelte';
