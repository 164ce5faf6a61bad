import './look.css';

export { default as DataPatterns } from './DataPatterns.svelte';
export { dataLook, dataLooks, patternStrokes, type DataLook, type DataPattern } from './data-looks';
