import type { GraphTrend } from '#core/graphs';

/** How each kind of line is broken, so that no two are told apart by colour alone. */
export const gapDash = '2 5';

/** A join that nobody measured is thinner than any other. */
export const gapWidth = 1.5;

export const trendDashes: Readonly<Record<GraphTrend['kind'], string>> = {
  'median-of-slopes': '14 5',
  'least-squares': '14 4 3 4',
};

/** An SVG stroke-dasharray as a canvas takes it: `none` is a whole line. */
export const canvasDash = (dash: string): number[] =>
  dash === 'none' ? [] : dash.split(' ').map(Number);
