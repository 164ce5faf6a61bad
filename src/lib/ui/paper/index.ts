export { default as DrawingPicture } from './DrawingPicture.svelte';
