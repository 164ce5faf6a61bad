import { BarController, BarElement, CategoryScale, Chart, LinearScale } from 'chart.js';
import type { BarsInSteps } from '#core/graphs';
import { chartPalette } from './chart-palette';
import { whenLookChanges } from './when-look-changes';

Chart.register(BarController, BarElement, CategoryScale, LinearScale);

/**
 * Draws a bar graph on a canvas, in one plain colour, from the floor of its scale, and again when
 * the look of the page changes. Returns the way to stop.
 */
export function drawBarGraph(
  canvas: HTMLCanvasElement,
  graph: BarsInSteps,
  isUpright: boolean,
): () => void {
  let chart = drawOnce(canvas, graph, isUpright, false);
  const stopWatching = whenLookChanges((isForPaper) => {
    chart.destroy();
    chart = drawOnce(canvas, graph, isUpright, isForPaper);
  });
  return () => {
    stopWatching();
    chart.destroy();
  };
}

function drawOnce(
  canvas: HTMLCanvasElement,
  { bars, labels }: BarsInSteps,
  isUpright: boolean,
  isForPaper: boolean,
): Chart {
  const palette = chartPalette(canvas, isForPaper);
  const { colour } = palette.line(0);
  const letters = { color: palette.ink, font: { family: palette.letters, size: 16 } };
  const numbers = {
    min: 0,
    max: labels.length - 1,
    grid: { color: palette.grid },
    ticks: { ...letters, stepSize: 1, callback: (step: string | number) => labels[Number(step)] },
  };
  const names = { grid: { display: false }, ticks: { ...letters } };
  return new Chart(canvas, {
    type: 'bar',
    data: {
      labels: bars.map((bar) => bar.name),
      datasets: [
        {
          data: bars.map((bar) => bar.steps),
          backgroundColor: colour,
          borderColor: palette.ink,
          borderWidth: 2,
          barPercentage: 0.7,
          categoryPercentage: 0.8,
        },
      ],
    },
    options: {
      animation: false,
      events: [],
      indexAxis: isUpright ? 'x' : 'y',
      maintainAspectRatio: false,
      scales: isUpright ? { x: names, y: numbers } : { x: numbers, y: names },
    },
  });
}
