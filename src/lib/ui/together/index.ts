export { default as TogetherPage } from './TogetherPage.svelte';
export { foundWords, numbersIn, togetherWords, whoIsRight } from './together-words';
