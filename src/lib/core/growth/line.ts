/** A straight line: the height at x = 0, and the rise for each 1 of x. */
export interface Line {
  readonly slope: number;
  readonly intercept: number;
}

/**
 * The height of a line at x.
 * @example
 * lineAt({ slope: 0.5, intercept: 4 }, 3) // => 5.5
 */
export const lineAt = (line: Line, x: number): number => line.intercept + line.slope * x;

/**
 * How far each y lies above the line (below when negative), in the order given.
 * @example
 * residualsOf({ slope: 0.5, intercept: 4 }, [0, 2], [4, 6]) // => [0, 1]
 */
export const residualsOf = (
  line: Line,
  xs: readonly number[],
  ys: readonly number[],
): readonly number[] => ys.map((y, index) => y - lineAt(line, xs[index] as number));
