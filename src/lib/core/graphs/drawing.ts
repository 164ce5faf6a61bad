import type { GraphKind } from './graph-table';

/**
 * Everything a child placed on the paper, where they placed it: marks with positions, not pixels.
 * Positions are in squares of the graph paper from the corner where the two sides meet, `x` to
 * the right and `y` up; parts of a square are allowed. What is not there was not drawn.
 */
export interface Drawing {
  readonly kind: GraphKind;
  readonly level: DrawingLevel;
  readonly paper: { readonly columns: number; readonly rows: number };
  /** Whether bars stand up and rows of pictures climb; else they lie along the paper. */
  readonly upright: boolean;
  readonly title: string;
  readonly key: DrawnKey | null;
  /** Which mark or line belongs to whom, where there is more than one. */
  readonly seriesKey: readonly { readonly series: number; readonly text: string }[];
  /** The side that numbers climb (for a line plot: nothing is needed here). */
  readonly side: DrawnSide;
  /** The bottom, where it carries numbers: the number line of a line plot. */
  readonly bottom: DrawnSide;
  /** Names of kinds or days, each beside its bar, row or point. */
  readonly places: readonly { readonly at: number; readonly text: string }[];
  readonly symbols: readonly DrawnSymbol[];
  readonly bars: readonly DrawnBar[];
  readonly crosses: readonly DrawnCross[];
  readonly points: readonly DrawnPoint[];
  readonly joins: readonly DrawnJoin[];
  /** Lines drawn freely, as positions they pass through. */
  readonly strokes: readonly { readonly path: readonly (readonly [x: number, y: number])[] }[];
}

/** What the paper had on it before the child began. */
export const drawingLevels = ['frame-given', 'scale-given', 'empty-paper'] as const;
export type DrawingLevel = (typeof drawingLevels)[number];

/** The pictures of a picture graph, drawn for this notebook. */
export const symbolNames = [
  'leaf',
  'drop',
  'sun',
  'cloud',
  'boot',
  'seed',
  'flake',
  'star',
  'circle',
  'square',
] as const;
export type SymbolName = (typeof symbolNames)[number];

export interface DrawnKey {
  /** How many things one picture stands for, or null while no number is written. */
  readonly value: number | null;
  readonly symbol: SymbolName | null;
  /** What the picture stands for, as the child wrote it. */
  readonly text: string;
}

export interface DrawnSide {
  /** What the numbers are of: "days", "height in cm". */
  readonly label: string;
  readonly ticks: readonly { readonly at: number; readonly text: string }[];
}

export interface DrawnSymbol {
  /** The place of its row, as a position across the rows. */
  readonly row: number;
  /** The middle of the picture, as a position along its row. */
  readonly at: number;
  /** Its size in squares. */
  readonly size: number;
  readonly symbol: SymbolName;
  readonly part: 'whole' | 'half';
}

export interface DrawnBar {
  /** The middle of the bar, across. */
  readonly at: number;
  readonly width: number;
  /** Where it stands, and where it ends, along the number side. */
  readonly from: number;
  readonly to: number;
}

export interface DrawnCross {
  readonly at: number;
  /** The middle of the cross, up from the number line. */
  readonly height: number;
  readonly size: number;
  readonly look: 'cross' | 'ring' | 'box';
}

export interface DrawnPoint {
  readonly x: number;
  readonly y: number;
  readonly series: number;
}

export interface DrawnJoin {
  /** Indexes of two points. */
  readonly from: number;
  readonly to: number;
  readonly line: 'solid' | 'dashed';
}
