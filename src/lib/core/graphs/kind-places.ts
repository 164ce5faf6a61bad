import type { Drawing } from './drawing';

/** Every second square, with a square left free before the first. Not part of the public door. */
export const kindPlaces = (rows: readonly { readonly label: string }[]): Drawing['places'] =>
  rows.map(({ label }, index) => ({ at: index * 2 + 1.5, text: label }));

/** The squares that so many kinds take. Not part of the public door. */
export const kindSquaresAcross = (count: number): number => count * 2 + 1;
