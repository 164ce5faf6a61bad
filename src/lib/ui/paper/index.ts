export { default as CheckBars } from './CheckBars.svelte';
export { default as CoveredSheets } from './CoveredSheets.svelte';
export { default as DrawingPicture } from './DrawingPicture.svelte';
export { default as PaperPage } from './PaperPage.svelte';
export { default as PaperPreview } from './PaperPreview.svelte';
export { default as PaperSheet } from './PaperSheet.svelte';
export { default as PaperTableBlocks } from './PaperTableBlocks.svelte';
export { drawingChild } from './drawing-child';
export {
  footMm,
  gapMm,
  headMm,
  paperLayout,
  type SheetLayout,
  type SheetNeeds,
} from './paper-layout';
export type { PictureFrame } from './picture-frame';
export { askedOtherwise } from './paper-request';
export { isPaperSize, pageRule, paperSizes, sheetRoom, type PaperSizeName } from './paper-sizes';
export { paperTables, tableNeeds, type PaperTable } from './paper-table';
export { checkWords, sheetTask, sheetWords, squareWords } from './paper-words';
export { pictureEdges } from './picture-frame';
export { linesMm } from './picture-lines';
export { blocksBySheet, tableBlocks } from './table-blocks';
export { tableCells, type TableCells } from './table-cells';
