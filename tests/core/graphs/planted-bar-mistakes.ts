import { drawRight, exactOfLabel, labelsOf, type Drawing, type RightGraph } from '#core/graphs';
import { changed, without } from './right-drawings';

/**
 * A right drawing with one mistake planted in it, or null where the table or the drawing has no
 * room for this mistake, or where it would be another one just as well (said beside each).
 * `pick` is any whole number from 0 on and chooses where and how.
 */
export type Planter = (right: RightGraph, drawing: Drawing, pick: number) => Drawing | null;

const ticks = (drawing: Drawing) => drawing.side.ticks;
const withTicks = (drawing: Drawing, list: Drawing['side']['ticks']): Drawing => ({
  ...drawing,
  side: { ...drawing.side, ticks: list },
});
const stepOf = (right: RightGraph, drawing: Drawing): number =>
  valueOf(right, drawing, 1) - valueOf(right, drawing, 0);
const valueOf = (right: RightGraph, drawing: Drawing, tick: number): number =>
  exactOfLabel(ticks(drawing)[tick]!.text, right.table as never)!;
const valuesOf = ({ table }: RightGraph): readonly (number | null)[] =>
  table.form === 'counts'
    ? table.rows.map(({ count }) => count)
    : table.form === 'values'
      ? table.rows.map(({ exact }) => exact)
      : [];
const oneOf = <Item>(list: readonly Item[], pick: number): Item | undefined =>
  list[pick % list.length];
/** Bars of something, by index. */
const tallBars = (drawing: Drawing): readonly number[] =>
  drawing.bars.flatMap(({ to }, index) => (to > 0 ? [index] : []));
const moved = (drawing: Drawing, by: number): Drawing => ({
  ...drawing,
  bars: drawing.bars.map((bar) => (bar.to > 0 ? { ...bar, to: bar.to + by } : bar)),
});
const barAt = (drawing: Drawing, at: number): number =>
  drawing.bars.findIndex((bar) => bar.at === at);

/** Every number a step higher; the bars follow the squares, or the numbers. */
const startsAtOne: Planter = (right, drawing, pick) => {
  const step = stepOf(right, drawing);
  const count = ticks(drawing).length;
  const labels = labelsOf({ from: step, to: step * count, step }, right.table as never);
  const raised = withTicks(
    drawing,
    ticks(drawing).map((tick, index) => ({ ...tick, text: labels[index]! })),
  );
  // A bar lower than one step would have to hang below the floor.
  const isLow = drawing.bars.some(({ to }) => to > 0 && to < 1);
  return pick % 2 === 0 || isLow ? raised : moved(raised, -1);
};

const numbersInBoxes: Planter = (right, drawing, pick) => {
  const list = ticks(drawing);
  const lower = list.slice(1).map((tick) => ({ ...tick, at: tick.at - 0.5 }));
  const higher = list.map((tick) => ({ ...tick, at: tick.at + 0.5 }));
  const isLow = drawing.bars.some(({ to }) => to > 0 && to <= 0.5);
  switch (pick % 6) {
    case 0: // A single number would be read as counted from the corner.
      return lower.length < 2 ? null : withTicks(drawing, lower);
    case 1:
      return lower.length < 2 || isLow ? null : moved(withTicks(drawing, lower), -0.5);
    case 2:
      return withTicks(drawing, higher);
    case 3:
      return moved(withTicks(drawing, higher), 0.5);
    case 4: // With fewer than three numbers in boxes the first gap may as well be B4.
      return lower.length < 3 ? null : withTicks(drawing, [list[0]!, ...lower]);
    default: {
      // One bar alone that is half a step off is a B8; values between the lines that all end on
      // lines are a B14.
      const isOnLine = ({ to }: { readonly to: number }) => Number.isInteger(to + 0.5);
      const tall = drawing.bars.filter(({ to }) => to > 0);
      if (tall.length < 2 || isLow || tall.some(({ to }) => !Number.isInteger(to))) return null;
      return tall.every(isOnLine) ? null : moved(drawing, pick % 12 < 6 ? -0.5 : 0.5);
    }
  }
};

/** The numbers that are those of the table and no others are B5. */
const listsTheTable = (right: RightGraph, drawing: Drawing): boolean => {
  const written = new Set(ticks(drawing).map((_, tick) => valueOf(right, drawing, tick)));
  const wanted = new Set(valuesOf(right).filter((value) => value));
  written.delete(0);
  return written.size === wanted.size && [...wanted].every((value) => written.has(value!));
};

const unequalSteps: Planter = (right, drawing, pick) => {
  const list = ticks(drawing);
  const step = stepOf(right, drawing);
  // Two numbers have only one step.
  if (list.length < 3) return null;
  const from = 1 + (pick % (list.length - 1));
  const labels = labelsOf({ from: 0, to: step * list.length, step }, right.table as never);
  const skipped = withTicks(
    drawing,
    list.map((tick, index) => ({ ...tick, text: labels[index < from ? index : index + 1]! })),
  );
  return listsTheTable(right, skipped) ? null : skipped;
};

const unequalSpaces: Planter = (_, drawing, pick) => {
  const list = ticks(drawing);
  if (list.length < 3) return null;
  const from = 1 + (pick % (list.length - 1));
  return withTicks(
    drawing,
    list.map((tick, index) => ({ ...tick, at: tick.at + (index < from ? 0 : 0.6) })),
  );
};

const onlyTheValues: Planter = (right, drawing, pick) => {
  const values = [...new Set(valuesOf(right).filter((value) => value))] as number[];
  values.sort((one, other) => one - other);
  const listed = [0, ...values];
  const steps = new Set(listed.slice(1).map((value, index) => value - listed[index]!));
  // Equal steps are a fair scale, whatever the child listed.
  if (values.length < 2 || steps.size === 1) return null;
  const written = listed.map((value, at) => ({
    at,
    text: labelsOf({ from: value, to: value, step: 1 }, right.table as never)[0]!,
  }));
  const bars = drawing.bars.map((bar) => ({
    ...bar,
    to: listed.indexOf(rowValue(right, drawing, bar)),
  }));
  // Without its 0 an even list is a scale of its own, that starts at another number or nearly at 0.
  const bare = written.slice(1);
  const [lowest, next] = values as [number, number];
  const hasEven = new Set(values.slice(1).map((value, index) => value - values[index]!)).size === 1;
  const isScale = hasEven && (lowest * 2 - next) / (next - lowest) > -0.16;
  const withoutZero = pick % 2 === 1 && !isScale;
  return { ...withTicks(drawing, withoutZero ? bare : written), bars };
};

const rowValue = (right: RightGraph, drawing: Drawing, bar: { readonly at: number }): number =>
  valuesOf(right)[drawing.places.findIndex(({ at }) => at === bar.at)]!;

const floating: Planter = (_, drawing, pick) => {
  const index = oneOf(tallBars(drawing), pick);
  if (index === undefined) return null;
  const bar = drawing.bars[index]!;
  const [from, to] = [
    [Math.min(0.6, bar.to), bar.to],
    [1, bar.to + 1],
    [-0.5, bar.to],
  ][pick % 3]!;
  if (from! <= 0.25 && from! >= 0) return null;
  return { ...drawing, bars: changed(drawing.bars, index, { from: from!, to: to! }) };
};

const fatBar: Planter = (_, drawing, pick) => {
  if (drawing.bars.length < 2) return null;
  const index = pick % drawing.bars.length;
  const width = drawing.bars[index]!.width * (pick % 2 === 0 ? 1.5 : 0.5);
  return { ...drawing, bars: changed(drawing.bars, index, { width }) };
};

const oneOff: Planter = (_, drawing, pick) => {
  const index = oneOf(
    drawing.bars.map((__, each) => each),
    pick,
  );
  if (index === undefined) return null;
  const { to } = drawing.bars[index]!;
  const by = pick % 2 === 0 && to >= 1 ? -1 : 1;
  return { ...drawing, bars: changed(drawing.bars, index, { to: to + by }) };
};

/** Two values that differ by more than a wobble: else nobody could see the exchange. */
const swapped: Planter = (right, drawing, pick) => {
  const values = valuesOf(right);
  const step = stepOf(right, drawing);
  const pairs = values.flatMap((one, index) =>
    values.flatMap((other, later) =>
      later > index && one !== null && other !== null && Math.abs(one - other) > step / 2
        ? [[index, later] as const]
        : [],
    ),
  );
  const [one, other] = oneOf(pairs, pick) ?? [];
  if (one === undefined || other === undefined) return null;
  const [atOne, atOther] = [drawing.places[one]!.at, drawing.places[other]!.at];
  if (pick % 2 === 0) {
    const places = changed(
      changed(drawing.places, one, { text: drawing.places[other]!.text }),
      other,
      { text: drawing.places[one]!.text },
    );
    return { ...drawing, places };
  }
  const across = new Map([
    [atOne, atOther],
    [atOther, atOne],
  ]);
  const bars = drawing.bars.map((bar) => ({ ...bar, at: across.get(bar.at) ?? bar.at }));
  return { ...drawing, bars };
};

const noLabel: Planter = (_, drawing) => ({ ...drawing, side: { ...drawing.side, label: ' ' } });

const leftOut: Planter = (right, drawing, pick) => {
  const rows = valuesOf(right).flatMap((value, row) => (value === null ? [] : [row]));
  const row = oneOf(rows, pick)!;
  const { at } = drawing.places[row]!;
  const places = without(drawing.places, row);
  const bar = barAt(drawing, at);
  if (pick % 3 === 0 || bar < 0) {
    return { ...drawing, places, bars: drawing.bars.filter((each) => each.at !== at) };
  }
  return pick % 3 === 1
    ? { ...drawing, places }
    : // A bar of nothing that is left out is no mistake where its name stands.
      valuesOf(right)[row] === 0
      ? null
      : { ...drawing, bars: without(drawing.bars, bar) };
};

const perCase: Planter = (right, drawing) => {
  const { table } = right;
  if (table.form !== 'counts' || table.rows.every(({ count }) => count < 2)) return null;
  const cases = table.rows.flatMap(({ label, count }) =>
    Array.from({ length: count }, () => label),
  );
  // As many cases as kinds: bars of 1 for each kind are single wrong bars.
  if (cases.length <= table.rows.length) return null;
  const to = 1 / stepOf(right, drawing);
  return {
    ...drawing,
    places: cases.map((text, index) => ({ at: index * 2 + 1.5, text })),
    bars: cases.map((_, index) => ({ at: index * 2 + 1.5, width: 1, from: 0, to })),
  };
};

const vagueTitle: Planter = (_, drawing, pick) => ({
  ...drawing,
  title: pick % 2 === 0 ? '' : 'My picture',
});

const snapped: Planter = (right, drawing, pick) => {
  // Nearer than a quarter to a line is on the line; so only values between are snapped.
  const between = drawing.bars.flatMap(({ to }, index) => {
    const part = to - Math.floor(to);
    return part > 0.26 && part < 0.74 ? [index] : [];
  });
  if (between.length === 0) return null;
  const chosen = pick % 3 === 0 ? between : [oneOf(between, pick)!];
  const round = pick % 2 === 0 ? Math.floor : Math.ceil;
  const bars = drawing.bars.map((bar, index) =>
    chosen.includes(index) ? { ...bar, to: round(bar.to) } : bar,
  );
  return { ...drawing, bars };
};

const missingDay: Planter = (right, drawing, pick) => {
  const blank = valuesOf(right).flatMap((value, row) => (value === null ? [row] : []));
  const row = oneOf(blank, pick);
  if (row === undefined) return null;
  const { at } = drawing.places[row]!;
  if (pick % 3 < 2) {
    const bar = { at, width: drawing.bars[0]!.width, from: 0, to: pick % 3 };
    return { ...drawing, bars: [...drawing.bars, bar] };
  }
  const gap = drawing.places[1]!.at - drawing.places[0]!.at;
  // Where bars lie, later days are lower on the paper.
  const closed = (each: number): number => ((each - at) * gap > 0 ? each - gap : each);
  return {
    ...drawing,
    places: without(drawing.places, row).map((place) => ({ ...place, at: closed(place.at) })),
    bars: drawing.bars.map((bar) => ({ ...bar, at: closed(bar.at) })),
  };
};

/** Only tables of lengths have units; the words of the side name another one. */
const otherUnit: Planter = ({ table }, drawing) => {
  if (table.form !== 'values') return null;
  const other = table.unit === 'in' ? 'centimetres' : 'inches';
  return { ...drawing, side: { ...drawing.side, label: `${table.measured} in ${other}` } };
};

/** Every numbered mistake of a bar graph, and how a child may make it. */
export const plantBarMistake = {
  B1: startsAtOne,
  B2: numbersInBoxes,
  B3: unequalSteps,
  B4: unequalSpaces,
  B5: onlyTheValues,
  B6: floating,
  B7: fatBar,
  B8: oneOff,
  B9: swapped,
  B10: noLabel,
  B11: leftOut,
  B12: perCase,
  B13: vagueTitle,
  B14: snapped,
  B15: missingDay,
  B16: otherUnit,
} as const satisfies Record<string, Planter>;

/** The right drawing that mistakes are planted in. */
export const drawnWithStep = (right: RightGraph, times: number, upright: boolean): Drawing =>
  drawRight(right, { upright, step: right.scale.step * times });
