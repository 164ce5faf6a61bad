export { symbolLook, type SymbolLook } from './symbol-looks';
export { default as SymbolPicture } from './SymbolPicture.svelte';
export { symbolWords } from './symbol-words';
