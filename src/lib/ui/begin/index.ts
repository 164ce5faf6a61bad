export { default as BeginCard } from './BeginCard.svelte';
export { beginDrafts, type BeginAnswers } from './begin-answers';
export { default as FirstPage } from './FirstPage.svelte';
