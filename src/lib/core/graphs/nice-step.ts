/**
 * The step for an axis so that about so many steps cover a span: 1, 2 or 5 times a power of ten.
 * It is the one nearest to `span / count` by ratio, as d3-array's tickStep chooses it (checked
 * against d3-array 3.2.5). Throws for a span that is not above 0 and for fewer than one step.
 * @example
 * niceStep(9.7, 5) // => { times: 2, power: 0, size: 2 }
 * niceStep(1.13, 5) // => { times: 2, power: -1, size: 0.2 }
 */
export const niceStep = (span: number, count: number): NiceStep => {
  if (!(span > 0) || !Number.isFinite(span)) throw new RangeError(`${span} is no span`);
  if (!(count >= 1)) throw new RangeError(`${count} is no number of steps`);
  const wanted = span / count;
  const power = Math.floor(Math.log10(wanted));
  const share = wanted / 10 ** power;
  if (share >= Math.sqrt(50)) return step(1, power + 1);
  return step(share >= Math.sqrt(10) ? 5 : share >= Math.sqrt(2) ? 2 : 1, power);
};

/**
 * A range widened outward to whole steps, with its ticks, so that the ends are ticks themselves.
 * The step may change as the range grows, and is chosen again until it stays (as d3-array's nice
 * does). A range without length has a single tick.
 * @example
 * niceRange(0, 9.7, 5) // => { from: 0, to: 10, ticks: [0, 2, 4, 6, 8, 10] }
 * niceRange(0, 0.38, 4) // => { from: 0, to: 0.4, ticks: [0, 0.1, 0.2, 0.3, 0.4] }
 */
export const niceRange = (from: number, to: number, count: number): NiceRange => {
  if (from === to) return { from, to, ticks: [from] };
  let chosen = niceStep(to - from, count);
  let [first, last] = outward(from, to, chosen);
  for (let round = 0; round < mostRounds; round += 1) {
    const next = niceStep(valueAt(last, chosen) - valueAt(first, chosen), count);
    if (next.size === chosen.size) break;
    chosen = next;
    [first, last] = outward(from, to, chosen);
  }
  const ticks = Array.from({ length: last - first + 1 }, (_, index) =>
    valueAt(first + index, chosen),
  );
  return { from: ticks[0] as number, to: ticks.at(-1) as number, ticks };
};

export interface NiceStep {
  readonly times: 1 | 2 | 5;
  readonly power: number;
  /** `times` tens to the `power`, as a plain number. */
  readonly size: number;
}

export interface NiceRange {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly number[];
}

const mostRounds = 10;

const step = (times: NiceStep['times'], power: number): NiceStep => ({
  ...{ times, power },
  size: valueAt(1, { times, power }),
});

/** Steps below 1 are divided by a whole number: 3 * 0.1 is not 0.3, but 3 / 10 is. */
const valueAt = (steps: number, { times, power }: Pick<NiceStep, 'times' | 'power'>): number =>
  power >= 0 ? steps * times * 10 ** power : (steps * times) / 10 ** -power;

/** The last step at or below the start and the first at or above the end, counted from 0. */
const outward = (from: number, to: number, { size }: NiceStep): readonly [number, number] => [
  Math.floor(wholeWhenMeant(from / size)),
  Math.ceil(wholeWhenMeant(to / size)),
];

/** 0.3 / 0.1 is 2.9999999999999996 in doubles: a value on a step must not be taken past it. */
const wholeWhenMeant = (steps: number): number => {
  const whole = Math.round(steps);
  return Math.abs(steps - whole) <= Math.abs(steps) * 4 * Number.EPSILON ? whole : steps;
};
