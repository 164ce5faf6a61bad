import { exactPerUnit } from '#core/measure';
import type { LinePlotParts, PlotTick } from './line-plot-parts';

/**
 * Ticks on which quarters were counted on (1/1, 1/2, 1/3, 1/4) instead of measured: neighbours
 * with the top number 1 and bottom numbers that go up by one. On a right line that order cannot
 * come. Their places in the drawing. Not part of the public door.
 */
export const countedQuarters = (ticks: readonly PlotTick[]): readonly number[] =>
  ticks.flatMap((tick, place) => {
    const [here, before, after] = [tick, ticks[place - 1], ticks[place + 1]].map(partOf);
    const isCounted = goesOn(before, here) || goesOn(here, after);
    return isCounted ? [tick.index] : [];
  });

interface UnitPart {
  readonly whole: number;
  readonly bottom: number;
}

const partOf = (tick: PlotTick | undefined): UnitPart | null => {
  const found = /^\s*(?:(\d+)[\s-]+)?1\s*[/\u2044]\s*(\d+)(?!\d)/.exec(tick?.text ?? '');
  return found ? { whole: Number(found[1] ?? 0), bottom: Number(found[2]) } : null;
};

const goesOn = (one: UnitPart | null | undefined, next: UnitPart | null | undefined): boolean =>
  Boolean(one && next) && one?.whole === next?.whole && next?.bottom === (one?.bottom ?? 0) + 1;

/**
 * Fractions that stand at another place than the whole numbers beside them say, on a line that is
 * even without them. The fairest straight line through two ticks tells which ones are out of
 * place; where two lines are equally fair, the one through whole numbers counts. Empty when a
 * whole number or an end of the line is out of place too. Not part of the public door.
 */
export const misplacedFractions = ({ ticks, table }: LinePlotParts): readonly number[] => {
  const isWhole = ({ exact }: PlotTick): boolean => (exact ?? 0) % exactPerUnit(table.unit) === 0;
  const wholes = ticks.filter(isWhole);
  const inOrderOfTrust = [...wholes, ...ticks.filter((tick) => !isWhole(tick))];
  let fewest: readonly PlotTick[] = ticks;
  inOrderOfTrust.forEach((one, place) =>
    inOrderOfTrust.slice(place + 1).forEach((other) => {
      const off = ticks.filter((tick) => isOffLine(tick, one, other, ticks));
      if (off.length < fewest.length) fewest = off;
    }),
  );
  const ends = [ticks[0], ticks.at(-1)];
  const isEndOff = fewest.some((tick) => ends.includes(tick));
  // Two whole numbers always lie on one line, so that they vouch for no more than one other tick.
  const isSure = wholes.length > 2 || fewest.length === 1;
  return isEndOff || !isSure || fewest.some(isWhole) ? [] : fewest.map(({ index }) => index);
};

const isOffLine = (
  tick: PlotTick,
  one: PlotTick,
  other: PlotTick,
  ticks: readonly PlotTick[],
): boolean => {
  const perExact = (other.at - one.at) / ((other.exact ?? 0) - (one.exact ?? 0));
  const place = one.at + ((tick.exact ?? 0) - (one.exact ?? 0)) * perExact;
  const step = (ticks[1]?.exact ?? 0) - (ticks[0]?.exact ?? 0);
  return Math.abs(tick.at - place) > Math.abs(step * perExact) * fairWobble;
};

/** Half of the fifth by which distances between ticks may differ. */
const fairWobble = 0.1;
