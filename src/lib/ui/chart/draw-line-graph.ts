import { Chart, LinearScale, LineController, LineElement, PointElement, Tooltip } from 'chart.js';
import type { LineGraph } from '#core/graphs';
import { chartPalette } from './chart-palette';
import { lineGraphConfig } from './line-graph-config';
import { whenLookChanges } from './when-look-changes';

// The only file that holds the chart library: it is asked for when a graph is first shown.
Chart.register(LineController, LineElement, PointElement, LinearScale, Tooltip);

/**
 * Draws a graph on a canvas and keeps it in the look of the page: drawn again in another theme,
 * with the letters of the page once they are there, and in ink for paper. Returns the way to stop.
 */
export function drawLineGraph(canvas: HTMLCanvasElement, graph: LineGraph): () => void {
  let chart = drawOnce(canvas, graph, false);
  const redraw = (isForPaper: boolean): void => {
    chart.destroy();
    chart = drawOnce(canvas, graph, isForPaper);
  };
  const stopWatching = whenLookChanges(redraw);
  return () => {
    stopWatching();
    chart.destroy();
  };
}

const drawOnce = (canvas: HTMLCanvasElement, graph: LineGraph, isForPaper: boolean): Chart => {
  const config = lineGraphConfig(graph, chartPalette(canvas, isForPaper));
  if (!isForPaper) return new Chart(canvas, config as never);
  const options = { ...config.options, responsive: false, devicePixelRatio: 3 };
  const chart = new Chart(canvas, { ...config, options } as never);
  chart.resize(paperWidthPx, paperHeightPx);
  return chart;
};

/** 17 cm by 8 cm at 96 px to the inch: fits both A4 and US Letter with their margins. */
const paperWidthPx = 640;
const paperHeightPx = 302;
