export { default as DrawingPicture } from './DrawingPicture.svelte';
export { default as PaperPage } from './PaperPage.svelte';
