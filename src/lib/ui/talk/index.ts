export { default as TalkPage } from './TalkPage.svelte';
export { leastPx, squareFor } from './graph-size';
