import type { Chart, Plugin } from 'chart.js';
import type { DayState } from '#core/journal';
import type { LineGraph } from '#core/graphs';
import type { ChartPalette } from './chart-palette';

/** What is drawn beside the readings: the weekends behind them, and the days without a number. */
export const paperPlugins = (graph: LineGraph, palette: ChartPalette): Plugin<'line'>[] => [
  {
    id: 'weekends',
    beforeDraw: (chart) => {
      const { top, bottom } = chart.chartArea;
      chart.ctx.save();
      chart.ctx.fillStyle = palette.tint;
      for (const { from, to } of graph.weekends) {
        const [left, right] = [placeOf(chart, from), placeOf(chart, to)];
        chart.ctx.fillRect(left, top, right - left, bottom - top);
      }
      chart.ctx.restore();
    },
  },
  {
    id: 'base-marks',
    afterDraw: (chart) => {
      // Of the first log only: the marks of several would lie on one another.
      for (const { x, state } of graph.lines[0]?.marks ?? []) {
        drawBaseMark(chart.ctx, state, placeOf(chart, x), chart.chartArea.bottom, palette);
      }
    },
  },
];

const placeOf = (chart: Chart, x: number): number => chart.scales.x!.getPixelForValue(x);

/** The shapes of the key, as paths around a middle: the canvas and the key draw the same ones. */
export const baseMarkPaths: Readonly<Record<DayState, string>> = {
  'not-up-yet': 'M-5 0a5 5 0 1 0 10 0a5 5 0 1 0-10 0z',
  missed: 'M-5-5h10v10h-10z',
  lost: 'M-6-5h12l-6 10z',
  'no-sun': 'M-5 0a5 5 0 1 0 10 0a5 5 0 1 0-10 0z',
  trace: 'M0-6l5 6l-5 6l-5-6z',
};

const drawBaseMark = (
  ink: CanvasRenderingContext2D,
  state: DayState,
  x: number,
  y: number,
  palette: ChartPalette,
): void => {
  const path = new Path2D(baseMarkPaths[state]);
  ink.save();
  ink.translate(x, y);
  ink.fillStyle = palette.sheet;
  ink.strokeStyle = palette.ink;
  ink.lineWidth = 1.5;
  ink.fill(path);
  ink.stroke(path);
  ink.restore();
};
