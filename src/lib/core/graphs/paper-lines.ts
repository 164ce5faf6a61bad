/**
 * The nearest line of the paper, or the nearest middle between two, kept on the sheet. It depends
 * on the paper alone, never on what would be right. A touch in the middle between two goes up.
 * @example
 * snapToPaper(3.3, 12) // => 3.5
 * snapToPaper(-1, 12) // => 0
 * snapToPaper(20, 12) // => 12
 */
export const snapToPaper = (at: number, most: number): number =>
  Math.min(most, Math.max(0, Math.round(at * 2) / 2));

/**
 * The square a touch falls into, as the middle of it.
 * @example
 * middleOfSquare(3.3, 12) // => 3.5
 * middleOfSquare(12, 12) // => 11.5
 */
export const middleOfSquare = (at: number, most: number): number =>
  Math.min(most - 1, Math.max(0, Math.floor(at))) + 0.5;

/**
 * A number of squares as a child says it, with the half as a fraction.
 * @example
 * squaresText(4.5) // => '4 1/2'
 * squaresText(0.5) // => '1/2'
 * squaresText(3) // => '3'
 */
export const squaresText = (squares: number): string => {
  const whole = Math.floor(squares);
  if (squares - whole < 0.25) return String(whole);
  if (squares - whole >= 0.75) return String(whole + 1);
  return whole === 0 ? '1/2' : `${whole} 1/2`;
};
