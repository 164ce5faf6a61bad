import { begunDrawing, drawRight, rightGraphOf } from '#core/graphs';
import type {
  CountTable,
  Drawing,
  DrawingLevel,
  GraphKind,
  GraphTable,
  MeasureTable,
  RightGraph,
  TimeTable,
} from '#core/graphs';
import type { Stage } from '#core/journal';

/** Tables made up for these tests, one for each graph. */
export const sky: CountTable = {
  form: 'counts',
  counted: 'days',
  rows: [
    { label: 'sun', count: 4 },
    { label: 'cloud', count: 2 },
    { label: 'rain', count: 0 },
  ],
};

export const beans: MeasureTable = {
  ...{ form: 'measures', measured: 'height', unit: 'in', mark: '1 in', seriesNames: ['bean'] },
  values: [3, 4, 4, 6].map((inches, index) => ({
    ...{ label: `bean ${index + 1}`, exact: inches * 25_400_000, text: String(inches), series: 0 },
  })),
  unmeasured: [],
};

const day = (place: number, inches: number | null) => ({
  ...{ place, series: 0, exact: inches === null ? null : inches * 25_400_000, unit: 'in' as const },
  ...{ text: inches === null ? '' : String(inches) },
  state: inches === null ? ('missed' as const) : ('number' as const),
});

export const oneBean: TimeTable = {
  ...{ form: 'times', measured: 'height', unit: 'in', mark: '1 in', seriesNames: ['bean'] },
  specimens: [],
  places: ['Mon 2', 'Tue 3', 'Wed 4', 'Thu 5'],
  rows: [day(0, 1), day(1, 2), day(2, null), day(3, 4)],
};

export interface DeskProps {
  begun: Drawing;
  ticked: readonly number[];
  table: GraphTable;
  right: RightGraph;
  isFinished: boolean;
  keep: (drawing: Drawing, ticked: readonly number[]) => Promise<boolean>;
  onfinish: () => Promise<void>;
}

/** What the desk is given for a new drawing; `kept` gathers what it saves. */
export function deskFor(
  kind: GraphKind,
  table: GraphTable,
  level: DrawingLevel = 'frame-given',
  stage: Stage = 'grade-2',
): DeskProps & { kept: { drawing: Drawing; ticked: readonly number[] }[] } {
  const right = rightGraphOf(kind, table, stage);
  if (!right.ok) throw new Error(right.error.kind);
  const kept: { drawing: Drawing; ticked: readonly number[] }[] = [];
  return {
    ...{ begun: begunDrawing(drawRight(right.value), level), ticked: [], table, kept },
    ...{ right: right.value, isFinished: false, onfinish: () => Promise.resolve() },
    keep: (drawing, ticked) => {
      kept.push({ drawing, ticked });
      return Promise.resolve(true);
    },
  };
}
