import { remarkOn, remarkOnWhole, yetToDraw, type DrawnRemark } from './drawn-remark';
import { exactOfLabel } from './exact-of-label';
import type { LineGraphParts } from './line-graph-parts';
import { saysOtherUnit, ticksInOtherUnit } from './says-other-unit';
import { saysUnit } from './says-unit';
import { unitWords } from './unit-words';
import type { WrittenScale } from './written-scale';

/**
 * What there is to say about the numbers up the side, at most two things: how they go up (T5, T6;
 * a side that does not begin at 0, or that cannot be read, is told as T6), and whether they reach
 * (T7). Two units among the numbers are T14. Not part of the public door.
 */
export const remarksOnSide = (graph: LineGraphParts): readonly DrawnRemark[] => {
  const { drawing, scale, table } = graph;
  const { ticks, label } = drawing.side;
  const otherUnits = ticksInOtherUnit(ticks, table.unit);
  if (otherUnits.length > 0) {
    return [remarkOn('T14', 'side-ticks', otherUnits)];
  }
  if (saysOtherUnit(label, table.unit)) return [remarkOnWhole('T14', 'side-label')];
  if (ticks.length === 0) return [yetToDraw(remarkOn('T6', 'side-ticks', []))];
  const unread = ticks.flatMap(({ text }, index) =>
    exactOfLabel(text, table) === null ? [index] : [],
  );
  if (unread.length > 0) return [remarkOn('T6', 'side-ticks', unread)];
  if (!scale) return [yetToDraw(remarkOn('T6', 'side-ticks', [...ticks.keys()]))];
  if (!scale.isFair || !beginsAtZero(scale)) {
    if (!isCountedOn(graph, scale) && areReadings(graph, scale))
      return [remarkOn('T5', 'side-ticks', [...ticks.keys()])];
    return [remarkOn('T6', 'side-ticks', scale.isFair ? [firstOf(scale)] : unevenOf(scale))];
  }
  return reaches(graph, scale) ? [] : [remarkOn('T7', 'side-ticks', [lastOf(scale)])];
};

/** Whether the floor of the paper, or a tick above it, is 0. Not part of the public door. */
export const beginsAtZero = (scale: WrittenScale): boolean =>
  (scale.ticks[0]?.value ?? 0) <= 0 || Math.abs(scale.valueAt(0)) <= scale.step / 4;

/** The label of the side: B10 where nothing is said, softly where only the unit is missing. */
export const remarkOnSideLabel = ({
  drawing,
  right,
  table,
}: LineGraphParts): DrawnRemark | null => {
  const { label, ticks } = drawing.side;
  const texts = [label, ...ticks.map(({ text }) => text)];
  if (texts.some((text) => saysUnit(text, unitWords(table.unit)))) return null;
  if (texts.some((text) => saysOtherUnit(text, table.unit))) return null;
  const remark = remarkOnWhole('B10', 'side-label');
  const saysWhat = saysUnit(label, right.sideWords);
  return saysWhat
    ? { ...remark, mistake: { ...remark.mistake, isSoft: true } }
    : label.trim() === ''
      ? yetToDraw(remark)
      : remark;
};

/** The numbers were counted on by a plain step, so that they are readings by chance only. */
const isCountedOn = ({ right }: LineGraphParts, scale: WrittenScale): boolean =>
  scale.hasEvenSteps && (!scale.isFair || scale.step === right.scale.step);

/** The numbers up the side are the readings, in the order of the log or of their size. */
const areReadings = ({ measured, table }: LineGraphParts, scale: WrittenScale): boolean => {
  const up = scale.ticks.map(({ value }) => value);
  const numbers = up[0] === 0 && !measured.some(({ exact }) => exact === 0) ? up.slice(1) : up;
  if (numbers.length < 3) return false;
  return table.seriesNames.some((_, series) => {
    const read = measured
      .filter((row) => row.series === series)
      .toSorted((one, other) => one.place - other.place)
      .map(({ exact }) => exact);
    const each = [...new Set(read)];
    const bySize = each.toSorted((one, other) => one - other);
    return [read, each, bySize].some((list) => isSame(list, numbers));
  });
};

const isSame = (one: readonly number[], other: readonly number[]): boolean =>
  one.length === other.length && one.every((value, index) => value === other[index]);

const reaches = ({ measured }: LineGraphParts, scale: WrittenScale): boolean =>
  measured.every(({ exact }) => exact <= (scale.ticks.at(-1)?.value ?? 0));

const firstOf = ({ ticks }: WrittenScale): number => ticks[0]?.index ?? 0;
const lastOf = ({ ticks }: WrittenScale): number => ticks.at(-1)?.index ?? 0;

/** The numbers whose step does not fit their distance. */
const unevenOf = ({ ticks, step, space }: WrittenScale): readonly number[] =>
  ticks.flatMap(({ at, value, index }, place) => {
    const before = ticks[place - 1];
    if (!before) return [];
    const [steps, spaces] = [(value - before.value) / step, (at - before.at) / space];
    return Math.abs(spaces - steps) > 0.1 || steps <= 0 ? [index] : [];
  });
