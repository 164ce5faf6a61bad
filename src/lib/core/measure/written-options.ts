/** How numbers are written: with a decimal point (12.5), or a decimal comma (12,5). */
export type DecimalSign = 'point' | 'comma';

export interface WrittenOptions {
  /** Point when not said. */
  readonly decimal?: DecimalSign;
  /** `keep` writes every place the mark has (12.0 cm to the millimetre); `drop` when not said. */
  readonly trailingZeros?: 'drop' | 'keep';
}

export const characterFor = (decimal: DecimalSign = 'point'): '.' | ',' =>
  decimal === 'comma' ? ',' : '.';
