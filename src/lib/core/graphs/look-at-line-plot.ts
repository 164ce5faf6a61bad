import type { Drawing } from './drawing';
import { lookOf, remarkOn, remarkOnWhole, yetToDraw, type DrawnRemark } from './drawn-remark';
import type { Look, RightPart } from './found-mistake';
import { remarkOnPlotLine } from './line-plot-line';
import { readLinePlot, type LinePlotParts } from './line-plot-parts';
import { sortCrosses } from './line-plot-series';
import { remarkOnSizes, remarkOnStacks } from './line-plot-stacks';
import { areDayNumbers, remarksOnPlotValues } from './line-plot-values';
import { placeOnScale } from './place-on-scale';
import type { RightGraph } from './right-graph';
import { saysUnit } from './says-unit';

/**
 * A kind look at a line plot that a child drew: what is right, and what to look at again, in the
 * order a teacher would raise it: what the plot shows at all, the number line, the crosses, their
 * piles, whose they are, joins, the unit; parts not drawn yet come last. One cause is told once.
 *
 * The child's own number line counts, and a cross within a quarter of one interval of its tick is
 * right. Where the numbers of the line do not go up, crosses cannot be read from it, and are looked
 * at when the line is mended. A title left out is P1, since a line plot has no number of its own
 * for it. A number line that ends too soon, and words where a number belongs, are told as L3.
 * Throws for a graph of another kind.
 * @example
 * lookAtLinePlot({ kind: 'line-plot', table: { form: 'measures', unit: 'cm', seriesNames: ['ours'], values: [{ label: 'leaf', exact: 30000000, series: 0 }], unmeasured: [] }, scale: { step: 10000000 }, sideWords: ['cm'] }, { ...emptyDrawing('line-plot', { columns: 4, rows: 4 }), title: 'Leaves', bottom: { label: 'cm', ticks: [{ at: 1, text: '3' }] } }).mistakes // => [{ id: 'L8', lookAt: { part: 'whole' }, isSoft: false }]
 */
export const lookAtLinePlot = (right: RightGraph, drawing: Drawing): Look => {
  const plot = readLinePlot(right, drawing);
  const line = remarkOnPlotLine(plot);
  const sorted = plot.risingScale ? sortCrosses(plot, plot.risingScale) : null;
  const values = sorted ? remarksOnPlotValues(plot, withinReach(plot, sorted.matched)) : [];
  const isOff = values.length > 0 || sorted === null;
  const idea = remarkOnIdea(plot, isOff, sorted !== null && areDayNumbers(plot, sorted.matched));
  // A cross out of its place leaves a hole in its pile: that is told already.
  const isSlid = values.some(({ mistake }) => mistake.id === 'L6');
  const stacks = isSlid ? remarkOnSizes(plot) : remarkOnStacks(plot);
  const isPlot = idea?.mistake.id !== 'L9';
  const isOtherGraph = idea !== null && (isOff || (!isPlot && stacks !== null));
  const remarks = [
    idea,
    ...(isOtherGraph ? [] : [line, ...values, ...unreadable(plot)]),
    isPlot && !isOtherGraph ? stacks : null,
    isPlot ? (sorted?.remark ?? null) : null,
    remarkOnJoins(drawing),
    hasUnit(plot) ? null : yetToDraw(remarkOnWhole('L11', 'bottom-label')),
    hasTitle(drawing) ? null : yetToDraw(remarkOnWhole('P1', 'title')),
  ].filter((remark) => remark !== null);
  return lookOf(rightParts(plot, remarks), remarks);
};

/** L9 and L1: another graph than a line plot was drawn. */
const remarkOnIdea = (
  { drawing, right, table, ticks }: LinePlotParts,
  isOff: boolean,
  hasDayNumbers: boolean,
): DrawnRemark | null => {
  const { bars, side } = drawing;
  if (saysUnit(side.label, right.sideWords)) return remarkOnWhole('L9', 'side-label');
  if (bars.length > 0) return remarkOn('L9', 'bars', [...bars.keys()]);
  const names = [...table.values, ...table.unmeasured].map(({ label }) => plain(label));
  const named = ticks.filter(({ exact, text }) => exact === null && names.includes(plain(text)));
  if (named.length > 1)
    return remarkOn(
      'L1',
      'bottom-ticks',
      named.map(({ index }) => index),
    );
  return isOff && hasDayNumbers ? remarkOn('L1', 'crosses', [...drawing.crosses.keys()]) : null;
};

/** A value beyond the end of the line has its cross when the line is mended. */
const withinReach = (
  { risingScale }: LinePlotParts,
  matched: ReturnType<typeof sortCrosses>['matched'],
): typeof matched => {
  const [first, last] = [risingScale?.ticks[0], risingScale?.ticks.at(-1)];
  if (!risingScale || !first || !last || matched.strays.length > 0) return matched;
  const spare = risingScale.space / 2;
  const isOnLine = ({ exact }: (typeof matched.missing)[number]): boolean => {
    const at = placeOnScale(risingScale, exact);
    return at >= first.at - spare && at <= last.at + spare;
  };
  return { ...matched, missing: matched.missing.filter(isOnLine) };
};

/** On a line that cannot be read the crosses can only be counted. */
const unreadable = ({ risingScale, drawing, table }: LinePlotParts): readonly DrawnRemark[] => {
  const difference = drawing.crosses.length - table.values.length;
  if (risingScale || difference === 0) return [];
  const remark = remarkOnWhole('L8', 'whole');
  return [difference < 0 ? yetToDraw(remark) : remark];
};

/** L10: joins, or a line drawn through crosses above two places. */
const remarkOnJoins = ({ joins, strokes, crosses }: Drawing): DrawnRemark | null => {
  if (joins.length > 0) return remarkOn('L10', 'joins', [...joins.keys()]);
  const through = strokes.flatMap(({ path }, index) => {
    const met = crosses.filter(({ at, height, size }) =>
      path.some(([x, y]) => Math.hypot(x - at, y - height) <= Math.max(size, 0.5)),
    );
    const places = met.map(({ at }) => at);
    return Math.max(...places) - Math.min(...places) > 0.5 ? [index] : [];
  });
  return through.length > 0 ? remarkOn('L10', 'strokes', through) : null;
};

const hasTitle = ({ title }: Drawing): boolean => title.trim() !== '';

const hasUnit = ({ drawing, right }: LinePlotParts): boolean =>
  [drawing.bottom.label, ...drawing.bottom.ticks.map(({ text }) => text)].some((text) =>
    saysUnit(text, right.sideWords),
  );

const rightParts = (
  { drawing, scale }: LinePlotParts,
  remarks: readonly DrawnRemark[],
): readonly RightPart[] => {
  const has = (...ids: readonly string[]): boolean =>
    remarks.some(({ mistake }) => ids.includes(mistake.id));
  const isLineSound = scale !== null && !has('L1', 'L3', 'L4', 'L5', 'L13', 'L14');
  const isDrawn = drawing.crosses.length > 0;
  const isRightGraph = !has('L1', 'L9');
  const parts: readonly (readonly [RightPart, boolean])[] = [
    ['title', hasTitle(drawing)],
    ['bottom-label', drawing.bottom.label.trim() !== '' && !has('L11')],
    ['unit', !has('L11')],
    ['even-scale', isLineSound],
    ['every-place', isLineSound],
    ['key', drawing.seriesKey.length > 1 && !has('L15')],
    ['same-size', drawing.crosses.length > 1 && isRightGraph && !has('L7')],
    ['one-mark-each', isDrawn && isRightGraph && !has('L2', 'L8', 'L12')],
    ['every-value', isDrawn && isRightGraph && isLineSound && !has('L2', 'L6', 'L8', 'L12')],
  ];
  return parts.flatMap(([part, isRight]) => (isRight ? [part] : []));
};

const plain = (text: string): string => text.trim().toLowerCase();
