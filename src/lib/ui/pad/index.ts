export { default as MeantNumbers } from './MeantNumbers.svelte';
export { readingInWords, wholeNumberInWords, type Sayable } from './number-words';
export { default as ReadingPad } from './ReadingPad.svelte';
export { unitWords } from './unit-words';
