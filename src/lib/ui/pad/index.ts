export { readingInWords, unitWords, wholeNumberInWords, type Sayable } from './number-words';
export { default as ReadingPad } from './ReadingPad.svelte';
