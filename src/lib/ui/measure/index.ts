export { default as MeasurePage } from './MeasurePage.svelte';
export { measureWords } from './measure-words';
