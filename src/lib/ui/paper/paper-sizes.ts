/** Sheets that home printers hold, upright, in millimetres: ISO 216, and ANSI/ASME Y14.1. */
export const paperSizes = {
  letter: { name: 'Letter', widthMm: 215.9, heightMm: 279.4 },
  a4: { name: 'A4', widthMm: 210, heightMm: 297 },
} as const;

export type PaperSizeName = keyof typeof paperSizes;

export const isPaperSize = (text: unknown): text is PaperSizeName =>
  typeof text === 'string' && Object.hasOwn(paperSizes, text);

/** White all round, wide enough for every home printer (12 mm: our own choice). */
export const marginMm = 12;

export type SheetDirection = 'tall' | 'wide';

/** The room inside the margins, a hair less than all of it so that no second sheet is begun. */
export const sheetRoom = (
  size: PaperSizeName,
  direction: SheetDirection,
): { readonly widthMm: number; readonly heightMm: number } => {
  const { widthMm, heightMm } = paperSizes[size];
  const [across, down] = direction === 'tall' ? [widthMm, heightMm] : [heightMm, widthMm];
  return { widthMm: across - 2 * marginMm, heightMm: down - 2 * marginMm - 0.5 };
};

/** The rule that tells a browser how large a page is and which way it lies. */
export const pageRule = (size: PaperSizeName, direction: SheetDirection): string => {
  const { widthMm, heightMm } = paperSizes[size];
  const measures = direction === 'tall' ? [widthMm, heightMm] : [heightMm, widthMm];
  return `@page { size: ${measures.map((mm) => `${mm}mm`).join(' ')}; margin: ${marginMm}mm; }`;
};
