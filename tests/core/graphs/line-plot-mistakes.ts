import type { Drawing, MeasureTable, RightGraph } from '#core/graphs';
import { exactPerUnit } from '#core/measure';

/** A drawing with one mistake of a kind in it, or null where this table cannot have it. */
export type PlantMistake = (
  right: RightGraph & { readonly table: MeasureTable },
  drawing: Drawing,
  pick: number,
) => Drawing | null;

type Cross = Drawing['crosses'][number];

/** Crosses of one place piled up anew, in their order. */
const piled = (crosses: readonly Cross[]): readonly Cross[] =>
  crosses.map((cross, index) => ({
    ...cross,
    height: crosses.slice(0, index).filter(({ at }) => at === cross.at).length + 0.5,
  }));

const withTicks = (drawing: Drawing, ticks: Drawing['bottom']['ticks']): Drawing => ({
  ...drawing,
  bottom: { ...drawing.bottom, ticks },
});

/** Ticks moved along the paper, and the crosses above them with them. */
const moved = (drawing: Drawing, place: (at: number) => number): Drawing => ({
  ...withTicks(
    drawing,
    drawing.bottom.ticks.map((tick) => ({ ...tick, at: place(tick.at) })),
  ),
  crosses: piled(drawing.crosses.map((cross) => ({ ...cross, at: place(cross.at) }))),
});

const pickOf = <Item>(items: readonly Item[], pick: number): Item | undefined =>
  items.length === 0 ? undefined : items[pick % items.length];

const dataTicks = ({ bottom, crosses }: Drawing) =>
  bottom.ticks.filter((tick) => crosses.some(({ at }) => at === tick.at));

const isFraction = ({ text }: { readonly text: string }): boolean => text.includes('/');

export const plotMistakes: Readonly<Record<string, PlantMistake>> = {
  'L1: a cross at the number of each day': ({ table }, drawing) => {
    const days = table.values.map((_, index) => index + 1);
    const units = table.values.map(({ exact }) => exact / exactPerUnit(table.unit));
    const without = (fits: (unit: number, day: number) => boolean) =>
      days.reduce<readonly number[]>((left, day) => {
        const found = left.findIndex((unit) => fits(unit, day));
        return found < 0 ? left : left.toSpliced(found, 1);
      }, units);
    // With one cross only beside its value, it is that cross that slid (L6); and within a quarter
    // of an inch of whole numbers, crosses at 1, 2, 3 show them.
    if (without((unit, day) => unit === day).length < 2) return null;
    if (without((unit, day) => Math.abs(unit - day) <= 0.25).length === 0) return null;
    const ticks = days.map((day) => ({ at: day, text: String(day) }));
    const crosses = drawing.crosses.map((cross, index) => ({
      ...cross,
      at: index + 1,
      height: 0.5,
    }));
    return { ...withTicks(drawing, ticks), crosses };
  },
  'L1: names of the readings along the line': ({ table }, drawing) => ({
    ...withTicks(
      drawing,
      table.values.map(({ label }, index) => ({ at: index + 1, text: label })),
    ),
    crosses: drawing.crosses.map((cross, index) => ({ ...cross, at: index + 1, height: 0.5 })),
  }),
  'L2: repeats drawn once': (_, drawing) => {
    const once = drawing.crosses.filter(
      (cross, index, all) =>
        all.findIndex(({ at, look }) => at === cross.at && look === cross.look) === index,
    );
    return once.length === drawing.crosses.length ? null : { ...drawing, crosses: piled(once) };
  },
  'L3: only numbers that came, at their places': (_, drawing) => {
    const ticks = dataTicks(drawing);
    const isWhole = ticks.length === (ticks.at(-1)?.at ?? 0) - (ticks[0]?.at ?? 0) + 1;
    return isWhole || ticks.length < 2 ? null : withTicks(drawing, ticks);
  },
  'L3: only numbers that came, side by side': (_, drawing) => {
    const ticks = dataTicks(drawing);
    const isWhole = ticks.length === (ticks.at(-1)?.at ?? 0) - (ticks[0]?.at ?? 0) + 1;
    if (isWhole || ticks.length < 2) return null;
    return moved(withTicks(drawing, ticks), (at) => ticks.findIndex((tick) => tick.at === at) + 1);
  },
  'L3: a line that ends too soon': (_, drawing) => {
    const ticks = drawing.bottom.ticks.slice(0, -1);
    return ticks.length < 2 || ticks.length + 1 < drawing.bottom.ticks.length
      ? null
      : withTicks(drawing, ticks);
  },
  'L4: a jump wider than the others': (_, drawing, pick) => {
    const { ticks } = drawing.bottom;
    const from = pickOf(ticks.slice(1), pick);
    // Of three ticks with a half in the middle nobody can say which one is out of place (L13).
    if (!from || ticks.length < 3 || (ticks.length === 3 && isFraction(ticks[1]!))) return null;
    return moved(drawing, (at) => (at >= from.at ? at + 0.5 : at));
  },
  'L5: numbers in the order of the log': ({ table }, drawing) => {
    const inOrder = [...new Set(drawing.crosses.map(({ at }) => at))];
    const texts = inOrder.map((at) => drawing.bottom.ticks.find((tick) => tick.at === at)!);
    const isRising = (all: readonly number[]) => all.every((at, i) => i === 0 || at > all[i - 1]!);
    // Whole numbers in order with fractions among them out of order are L13 by its definition.
    const wholes = texts.filter((tick) => !isFraction(tick)).map(({ at }) => at);
    if (isRising(inOrder) || (texts.some(isFraction) && isRising(wholes))) return null;
    if (table.seriesNames.length > 1) return null;
    return moved(withTicks(drawing, texts), (at) => inOrder.indexOf(at) + 1);
  },
  'L6: a cross above the next tick': (_, drawing, pick) => slid(drawing, pick, 1),
  'L6: a cross between two ticks': (_, drawing, pick) => slid(drawing, pick, 0.5),
  'L7: a cross larger than the others': (_, drawing, pick) => ({
    ...drawing,
    crosses: drawing.crosses.map((cross, index) =>
      index === pick % drawing.crosses.length ? { ...cross, size: cross.size * 1.5 } : cross,
    ),
  }),
  'L7: a pile with wide gaps': (_, drawing, pick) => {
    const piles = [...new Set(drawing.crosses.map(({ at }) => at))].filter(
      (at) => drawing.crosses.filter((cross) => cross.at === at).length > 1,
    );
    const chosen = pickOf(piles, pick);
    // A lone pile, and one of two that are alike, has nothing to differ from.
    if (chosen === undefined || piles.length < 3) return null;
    return {
      ...drawing,
      crosses: drawing.crosses.map((cross) =>
        cross.at === chosen ? { ...cross, height: (cross.height - 0.5) * 1.6 + 0.5 } : cross,
      ),
    };
  },
  'L8: a reading without its cross': (_, drawing, pick) => {
    const crosses = drawing.crosses.toSpliced(pick % drawing.crosses.length, 1);
    const kinds = new Set(drawing.crosses.map(({ at, look }) => `${at} ${look}`));
    const left = new Set(crosses.map(({ at, look }) => `${at} ${look}`));
    // With every number that came marked once, it is repeats that were drawn once (L2).
    if (crosses.length === kinds.size && left.size === kinds.size) return null;
    return { ...drawing, crosses: piled(crosses) };
  },
  'L8: a cross too many': (_, drawing, pick) => {
    const twice = pickOf(drawing.crosses, pick)!;
    const isAtZero = drawing.bottom.ticks.some(({ at, text }) => at === twice.at && text === '0');
    // A cross too many at 0 may stand for a day without a number (L12).
    return isAtZero ? null : { ...drawing, crosses: piled([...drawing.crosses, twice]) };
  },
  'L9: bars in place of crosses': (_, drawing) => ({
    ...drawing,
    crosses: [],
    bars: [...new Set(drawing.crosses.map(({ at }) => at))].map((at) => ({
      ...{ at, width: 0.8, from: 0 },
      to: drawing.crosses.filter((cross) => cross.at === at).length,
    })),
  }),
  'L9: the measure up the side': ({ table }, drawing) => ({
    ...drawing,
    bottom: {
      ...drawing.bottom,
      ticks: table.values.map((_, index) => ({ at: index + 1, text: String(index + 1) })),
    },
    side: { label: drawing.bottom.label, ticks: drawing.bottom.ticks },
    crosses: drawing.crosses.map((cross, index) => ({ ...cross, at: index + 1, height: cross.at })),
  }),
  'L10: crosses joined': (_, drawing) => ({
    ...drawing,
    joins: drawing.crosses.slice(1).map((_, to) => ({ from: to, to: to + 1, line: 'solid' })),
  }),
  'L10: a line drawn through the piles': (_, drawing) => {
    const path = drawing.crosses.map(({ at, height }) => [at, height] as const);
    const places = path.map(([at]) => at);
    return new Set(places).size < 2 ? null : { ...drawing, strokes: [{ path }] };
  },
  'L11: no unit': (_, drawing) => ({ ...drawing, bottom: { ...drawing.bottom, label: ' ' } }),
  'L11: what was measured, without the unit': (_, drawing) => ({
    ...drawing,
    bottom: { ...drawing.bottom, label: 'height in the garden' },
  }),
  'L12: a cross at 0 for a day without a number': ({ table, scale }, drawing) => {
    const below = Math.round(scale.from / scale.step);
    if (table.unmeasured.length === 0 || below > 12) return null;
    const unit = exactPerUnit(table.unit);
    const before = Array.from({ length: below }, (_, index) => ({
      at: index + 1,
      text: fraction((index * scale.step) / unit),
    }));
    const line = moved(drawing, (at) => at + below);
    const ticks = [...before, ...line.bottom.ticks];
    const zero = { ...drawing.crosses[0]!, at: 1, height: 0 };
    return { ...withTicks(line, ticks), crosses: piled([...line.crosses, zero]) };
  },
  'L13: one and a half before one': (_, drawing, pick) => {
    const { ticks } = drawing.bottom;
    const places = ticks.flatMap((tick, index) =>
      index > 0 && isFraction(tick) !== isFraction(ticks[index - 1]!) ? [index] : [],
    );
    const chosen = pickOf(places, pick);
    if (chosen === undefined) return null;
    const [one, two] = [ticks[chosen - 1]!.at, ticks[chosen]!.at];
    return moved(drawing, (at) => (at === one ? two : at === two ? one : at));
  },
  'L13: a half at the place of another part': (_, drawing, pick) => {
    const { ticks } = drawing.bottom;
    const inside = ticks.slice(1, -1).filter(isFraction);
    const chosen = pickOf(inside, pick);
    // Of three ticks, only whole numbers on both sides tell which one is out of place (else L4).
    if (!chosen || (ticks.length === 3 && [ticks[0]!, ticks[2]!].some(isFraction))) return null;
    return moved(drawing, (at) => (at === chosen.at ? at + 0.4 : at));
  },
  'L14: quarters counted on': ({ table }, drawing) => {
    if (table.mark !== '1/4 in') return null;
    const names: Readonly<Record<string, string>> = { '1/4': '1/2', '1/2': '1/3', '3/4': '1/4' };
    const ticks = drawing.bottom.ticks.map(({ at, text }) => ({
      at,
      text: text.replace(/\d\/\d/, (part) => names[part]!),
    }));
    // Alone, a half beside whole numbers looks like a half.
    return ticks.some(
      ({ text }, i) => /1\/2/.test(text) && /1\/3/.test(ticks[i + 1]?.text ?? ''),
    ) || ticks.some(({ text }, i) => /1\/3/.test(text) && /1\/4/.test(ticks[i + 1]?.text ?? ''))
      ? withTicks(drawing, ticks)
      : null;
  },
  'L15: two series with one mark': ({ table }, drawing) =>
    new Set(table.values.map(({ series }) => series)).size < 2
      ? null
      : { ...drawing, crosses: drawing.crosses.map((cross) => ({ ...cross, look: 'cross' })) },
  'L15: two marks and no key': ({ table }, drawing) =>
    new Set(table.values.map(({ series }) => series)).size < 2
      ? null
      : { ...drawing, seriesKey: [] },
};

/** The topmost cross of a pile slid along the line, the other way where it would leave it. */
const slid = (drawing: Drawing, pick: number, by: number): Drawing | null => {
  const { ticks } = drawing.bottom;
  if (ticks.length < 2) return null;
  const chosen = pick % drawing.crosses.length;
  const { at } = drawing.crosses[chosen]!;
  const to = at + by > ticks.at(-1)!.at ? at - by : at + by;
  const crosses = drawing.crosses.map((cross, index) =>
    index === chosen ? { ...cross, at: to } : cross,
  );
  return { ...drawing, crosses: piled(crosses) };
};

const fraction = (size: number): string => {
  const [whole, part] = [Math.floor(size), size % 1];
  const parts: Readonly<Record<number, string>> = { 0.25: '1/4', 0.5: '1/2', 0.75: '3/4' };
  return part === 0 ? String(whole) : `${whole === 0 ? '' : `${whole} `}${parts[part]}`;
};
