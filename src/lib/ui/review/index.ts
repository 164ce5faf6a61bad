export { default as ReviewPage } from './ReviewPage.svelte';
export { default as ReviewPaperPage } from './ReviewPaperPage.svelte';
export { paperChildWords } from './review-paper-words';
export { reviewWords } from './review-words';
