import type { Drawing } from './drawing';
import { lookOf, remarkOn, remarkOnWhole, yetToDraw, type DrawnRemark } from './drawn-remark';
import type { Look, RightPart } from './found-mistake';
import { remarksOnJoins } from './line-graph-joins';
import { readLineGraph, withPointsTurned, type LineGraphParts } from './line-graph-parts';
import { remarksOnPoints } from './line-graph-points';
import { sortPoints } from './line-graph-series';
import { beginsAtZero, remarkOnSideLabel, remarksOnSide } from './line-graph-side';
import { readStrokes } from './line-graph-strokes';
import { matchPoints } from './match-points';
import type { RightGraph } from './right-graph';

/**
 * A kind look at a line graph that a child drew: what is right, and what to look at again, in the
 * order a teacher would raise it: the way the paper lies, a picture in place of a graph, the days
 * along the bottom, the side, the points, the line, whose it is; parts not drawn yet come last. One
 * cause is told once.
 *
 * The child's own side and days count. A point within a quarter of one interval and of one day of
 * its reading is right; a line that wobbles is, too. Over a day without a reading a dashed join or
 * a break is right, and so are a lone point or dashes behind the last reading. What the numbered
 * mistakes do not name is told as the nearest of them: days not named yet, or out of order, as T1;
 * a side that does not begin at 0 as T6; a point on another day as T8; a solid join across a day
 * without a reading as T10; points not joined yet as T13. A side without a label is B10, a title
 * left out P1. Throws for a graph of another kind.
 * @example
 * lookAtLineGraph({ kind: 'line-graph', table: { form: 'times', unit: 'cm', seriesNames: ['bean'], places: ['Mon 2', 'Tue 3'], rows: [{ place: 0, series: 0, exact: 10000000, unit: 'cm' }] }, scale: { step: 10000000 }, sideWords: ['cm'] }, { ...emptyDrawing('line-graph', { columns: 4, rows: 4 }), title: 'Bean', side: { label: 'cm', ticks: [{ at: 0, text: '0' }, { at: 1, text: '1' }] }, places: [{ at: 1, text: 'Mon 2' }, { at: 2, text: 'Tue 3' }] }).mistakes // => [{ id: 'T8', lookAt: { part: 'whole' }, isSoft: false }]
 */
export const lookAtLineGraph = (right: RightGraph, drawing: Drawing): Look => {
  const { graph, isTurned } = turnedBack(readLineGraph(right, drawing));
  const sorted = sortPoints(graph);
  const strokes = readStrokes(graph);
  const isPicture = strokes.remarks.some(({ mistake }) => mistake.id === 'T11');
  const isOnlyPicture = isPicture && drawing.points.length === 0;
  const remarks = inTeachersOrder([
    ...(isTurned ? [remarkOn('T4', 'points', [...drawing.points.keys()])] : []),
    ...remarksOnDays(graph),
    ...remarksOnSide(graph),
    ...(isOnlyPicture ? [] : remarksOnPoints(graph, sorted.matched, sorted.seriesOfMark)),
    ...strokes.remarks,
    ...remarksOnJoins(graph, sorted.matched, strokes),
    ...[sorted.remark, remarkOnSideLabel(graph)].filter((remark) => remark !== null),
    ...(drawing.title.trim() === '' ? [yetToDraw(remarkOnWhole('P1', 'title'))] : []),
  ]);
  return lookOf(rightParts(graph, remarks), remarks);
};

const teachersOrder = [
  ...['T4', 'T11', 'T1', 'T5', 'T6', 'T7', 'T14', 'T2', 'T9', 'T8', 'T3', 'T13', 'T10', 'T12'],
  ...['B10', 'P1'],
];

const inTeachersOrder = (remarks: readonly DrawnRemark[]): readonly DrawnRemark[] =>
  remarks.toSorted(
    (one, other) => teachersOrder.indexOf(one.mistake.id) - teachersOrder.indexOf(other.mistake.id),
  );

/**
 * T4: the days climb the side, or each point stands at its value along and its day up. What is
 * looked at then is the graph turned back, so that nothing else is told of it for that alone.
 */
const turnedBack = (
  graph: LineGraphParts,
): { readonly graph: LineGraphParts; readonly isTurned: boolean } => {
  const { drawing, right } = graph;
  const turnedPoints = withPointsTurned(drawing);
  const { side, bottom, places } = drawing;
  const turned = readLineGraph(
    right,
    places.length === 0 && bottom.ticks.length > 0
      ? { ...turnedPoints, side: bottom, bottom: side, places: side.ticks }
      : turnedPoints,
  );
  if (!graph.scale && turned.scale && turned.days) return { graph: turned, isTurned: true };
  const [asIs, back] = [graph, turned].map((each) => matchPoints(each, null).rowByPoint.size) as [
    number,
    number,
  ];
  // Single points that slid may meet a reading when turned: nearly all of them have to.
  const fewest = Math.max(2, asIs * 2, drawing.points.length * 0.75);
  const isTurned = graph.scale !== null && back >= fewest;
  return isTurned ? { graph: turned, isTurned } : { graph, isTurned };
};

/** T1: days left out, or not as far apart on the paper as they are. */
const remarksOnDays = ({ days }: LineGraphParts): readonly DrawnRemark[] => {
  if (!days) return [yetToDraw(remarkOn('T1', 'places', []))];
  return days.isFair ? [] : [remarkOn('T1', 'places', days.uneven)];
};

const rightParts = (
  graph: LineGraphParts,
  remarks: readonly DrawnRemark[],
): readonly RightPart[] => {
  const { drawing, scale, days, table } = graph;
  const has = (...ids: readonly string[]): boolean =>
    remarks.some(({ mistake }) => ids.includes(mistake.id));
  const isDrawn = drawing.points.length > 0;
  const isJoined = drawing.joins.length + drawing.strokes.length > 0;
  const hasGaps = table.rows.some(({ exact }) => exact === null);
  const isSideSound = scale !== null && !has('T5', 'T6', 'T14');
  const parts: readonly (readonly [RightPart, boolean])[] = [
    ['title', drawing.title.trim() !== ''],
    ['side-label', drawing.side.label.trim() !== '' && !has('B10', 'T14')],
    ['unit', !has('B10', 'T14')],
    ['bottom-label', drawing.bottom.label.trim() !== ''],
    ['scale-from-zero', scale !== null && beginsAtZero(scale)],
    ['even-scale', isSideSound],
    ['every-day', days !== null && !has('T1', 'T4')],
    ['key', drawing.seriesKey.length > 1 && !has('T12')],
    ['every-value', isDrawn && isSideSound && !has('T1', 'T2', 'T4', 'T7', 'T8', 'T9', 'T11')],
    ['joined-in-order', isJoined && !has('T3', 'T11', 'T13')],
    ['gaps-shown', isJoined && hasGaps && !has('T1', 'T2', 'T3', 'T9', 'T10')],
  ];
  return parts.flatMap(([part, isRight]) => (isRight ? [part] : []));
};
