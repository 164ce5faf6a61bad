export { default as ReviewPage } from './ReviewPage.svelte';
export { reviewWords } from './review-words';
