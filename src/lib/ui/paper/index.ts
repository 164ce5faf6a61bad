export { default as DrawingPicture } from './DrawingPicture.svelte';
export { default as PaperPage } from './PaperPage.svelte';
export { default as PaperPreview } from './PaperPreview.svelte';
export { default as PaperSheet } from './PaperSheet.svelte';
export { isPaperSize, pageRule, paperSizes, sheetRoom } from './paper-sizes';
export { tableCells, type TableCells } from './table-cells';
