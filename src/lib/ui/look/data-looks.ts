/**
 * How data of one kind are told apart: by colour, and always by pattern, dash and shape as well,
 * so that nothing is lost in grey print or to an eye that sees fewer colours.
 * Colours: Okabe and Ito, Color Universal Design (2002, revised 2008). Those that reach 3:1 on
 * the sheet by themselves come first; the paler three lean on their outline in ink.
 */
export interface DataLook {
  readonly name: string;
  /** A CSS colour: a token of look.css. */
  readonly colour: string;
  /** The colour of the pattern's lines on it. */
  readonly lines: string;
  readonly pattern: DataPattern;
  /** An SVG stroke-dasharray; 'none' is a whole line. */
  readonly dash: string;
  readonly shape: 'circle' | 'square' | 'triangle' | 'diamond';
}

export type DataPattern =
  'plain' | 'slant' | 'dots' | 'upright' | 'level' | 'squares' | 'back-slant' | 'wide-slant';

export const dataLooks: readonly DataLook[] = [
  look('blue', 'var(--sheet)', 'plain', 'none', 'circle'),
  look('vermilion', 'var(--sheet)', 'slant', '10 5', 'square'),
  look('green', 'var(--sheet)', 'dots', '2 5', 'triangle'),
  look('purple', 'var(--sheet)', 'upright', '12 4 2 4', 'diamond'),
  look('orange', '#000000', 'level', '16 6', 'circle'),
  look('sky', '#000000', 'squares', '6 3', 'square'),
  look('yellow', '#000000', 'back-slant', '1 4', 'triangle'),
  look('ink', 'var(--sheet)', 'wide-slant', '14 4 6 4', 'diamond'),
];

/** The look of the nth kind, counted from 0; they come round again after the last. */
export const dataLook = (index: number): DataLook =>
  dataLooks[((index % dataLooks.length) + dataLooks.length) % dataLooks.length]!;

/** The strokes of each pattern on an 8 by 8 tile. */
export const patternStrokes: Readonly<Record<DataPattern, { d: string; width: number }>> = {
  plain: { d: '', width: 0 },
  slant: { d: 'M-2 2 2-2M0 8 8 0M6 10l4-4', width: 1.6 },
  dots: { d: 'M2 2h.01M6 6h.01', width: 2.4 },
  upright: { d: 'M4 0v8', width: 1.6 },
  level: { d: 'M0 4h8', width: 1.4 },
  squares: { d: 'M0 4h8M4 0v8', width: 1.1 },
  'back-slant': { d: 'M-2 6l4 4M0 0l8 8M6-2l4 4', width: 1.4 },
  'wide-slant': { d: 'M0 8 8 0', width: 0.9 },
};

function look(
  name: string,
  lines: string,
  pattern: DataPattern,
  dash: string,
  shape: DataLook['shape'],
): DataLook {
  return { name, colour: `var(--data-${name})`, lines, pattern, dash, shape };
}
