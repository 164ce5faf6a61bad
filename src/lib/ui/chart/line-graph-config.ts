import type {
  ChartConfiguration,
  ChartDataset,
  ChartOptions,
  PointStyle,
  TooltipItem,
} from 'chart.js';
import type { AxisTick, GraphLine, GraphPoint, LineGraph } from '#core/graphs';
import type { DataLook } from '#ui/look';
import { readingInUnit, readingWhenWords } from '#ui/growth-words';
import type { ChartPalette } from './chart-palette';
import { canvasDash, gapDash, gapWidth, trendDashes } from './dashes';
import { paperPlugins } from './paper-plugins';

type Dataset = ChartDataset<'line', GraphPoint[] | { x: number; y: number }[]>;

/**
 * A line graph turned into what Chart.js takes. Nothing is worked out here: places, ticks, joins
 * and words come with the graph. Nothing moves, so nothing has to be stilled for anybody.
 */
export const lineGraphConfig = (
  graph: LineGraph,
  palette: ChartPalette,
): ChartConfiguration<'line', Dataset['data']> => ({
  type: 'line',
  data: {
    datasets: [...graph.lines.flatMap(readingsOf(palette)), ...trendsOf(graph, palette)],
  },
  options: optionsOf(graph, palette),
  plugins: paperPlugins(graph, palette),
});

const readingsOf =
  (palette: ChartPalette) =>
  (line: GraphLine, index: number): Dataset[] => {
    const look = palette.line(index);
    const points = {
      ...{ label: line.name, pointStyle: pointStyles[look.shape], clip: 12 },
      // An outline round each of very many points would be all there is to see.
      ...{
        pointBorderColor: palette.ink,
        pointBorderWidth: line.points.length > manyPoints ? 0 : 1,
      },
    };
    const radius = pointRadius(line.points.length);
    return [
      {
        ...points,
        data: [...line.points],
        ...{ borderColor: look.colour, borderWidth: 2.5, borderDash: canvasDash(look.dash) },
        ...{ pointBackgroundColor: look.colour, pointRadius: radius, pointHoverRadius: radius + 2 },
        segment: {
          borderDash: ({ p0DataIndex }) =>
            isGap(line, p0DataIndex) ? canvasDash(gapDash) : undefined,
          borderWidth: ({ p0DataIndex }) => (isGap(line, p0DataIndex) ? gapWidth : undefined),
        },
      },
      ...(line.extra.length === 0
        ? []
        : [
            {
              ...points,
              ...{ data: [...line.extra], showLine: false },
              ...{ pointBackgroundColor: palette.sheet, pointRadius: radius },
            },
          ]),
    ];
  };

const trendsOf = (graph: LineGraph, palette: ChartPalette): Dataset[] =>
  graph.trends.map(({ kind, from, to }) => ({
    data: [from, to],
    ...{ borderColor: palette.ink, borderWidth: 2, borderDash: canvasDash(trendDashes[kind]) },
    ...{ pointRadius: 0, pointHoverRadius: 0 },
  }));

const optionsOf = (graph: LineGraph, palette: ChartPalette): ChartOptions<'line'> => {
  const font = { family: palette.letters, size: 14 };
  const axis = ({ from, to, ticks }: LineGraph['along']) => ({
    ...{ type: 'linear' as const, min: from, max: to },
    afterBuildTicks: (scale: { ticks: { value: number }[] }) => {
      scale.ticks = ticks.map(({ at }) => ({ value: at }));
    },
    ticks: {
      ...{ color: palette.ink, font, autoSkip: false, maxRotation: 0 },
      callback: labelOf(ticks),
    },
    grid: { color: palette.grid },
    border: { color: palette.ink, width: 2 },
  });
  return {
    ...{ animation: false, parsing: false, responsive: true, maintainAspectRatio: false },
    interaction: { mode: 'nearest', axis: 'x', intersect: false },
    layout: { padding: { top: 12, right: 12 } },
    scales: { x: axis(graph.along), y: axis(graph.up) },
    plugins: {
      tooltip: {
        ...{ backgroundColor: palette.sheet, borderColor: palette.ink, borderWidth: 1 },
        ...{ titleColor: palette.ink, bodyColor: palette.ink, displayColors: false },
        ...{ titleFont: { ...font, weight: 'bold' }, bodyFont: font, padding: 10, caretSize: 0 },
        filter: ({ raw }) => isReading(raw),
        callbacks: {
          title: (items) => items.slice(0, 1).flatMap(whenOf),
          label: (item) => whatOf(item, graph),
        },
      },
    },
  };
};

const labelOf =
  (ticks: readonly AxisTick[]) =>
  (_value: unknown, index: number): string | string[] => {
    const label = ticks[index]?.label ?? [];
    return label.length === 1 ? (label[0] as string) : [...label];
  };

const whenOf = ({ raw }: TooltipItem<'line'>): string[] =>
  isReading(raw) ? [readingWhenWords(raw.reading)] : [];

const whatOf = ({ raw, dataset }: TooltipItem<'line'>, { lines, up }: LineGraph): string => {
  if (!isReading(raw)) return '';
  const amount = readingInUnit(raw.reading, up.unit);
  return lines.length > 1 ? `${dataset.label}: ${amount}` : amount;
};

const isReading = (raw: unknown): raw is GraphPoint =>
  typeof raw === 'object' && raw !== null && 'reading' in raw;

const isGap = (line: GraphLine, index: number): boolean => line.joins[index] === 'across-a-gap';

const pointStyles: Readonly<Record<DataLook['shape'], PointStyle>> = {
  circle: 'circle',
  square: 'rect',
  triangle: 'triangle',
  diamond: 'rectRot',
};

/** Smaller where there are many, but never gone: every reading is a point. */
const pointRadius = (count: number): number => (count <= 70 ? 5 : count <= manyPoints ? 3 : 1.5);

const manyPoints = 250;
