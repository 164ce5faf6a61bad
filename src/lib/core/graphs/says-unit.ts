import { saysOneOf } from './says-one-of';

/**
 * Whether a child's words name the unit. The "in" of "height in the garden" is no inch: it counts
 * only at the end. Not part of the public door.
 */
export const saysUnit = (text: string, unitWords: readonly string[]): boolean =>
  saysOneOf(text.replace(/\bin\b(?=\s+[\p{L}\p{N}])/giu, ' '), unitWords);
