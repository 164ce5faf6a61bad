import { describe, expect, it } from 'vitest';
import { chanceOfSoFewRuns, perDayIn, shapeOf } from '#core/growth';
import { pointsOn, realLogs, sunflower } from './log-points';
import { near, valueOf } from './near';

const days = Array.from({ length: 14 }, (_, index) => index * 2);
const shaped = (height: (day: number) => number) =>
  valueOf(shapeOf(pointsOn(days, days.map(height), 'cm', '1 mm')));

describe('the shape of a log', () => {
  it('of the sunflowers of Reed & Holland 1919 is slow, fast, slow', () => {
    const shape = valueOf(shapeOf(sunflower.points));
    expect(shape.kind).toBe('slow-fast-slow');
    expect(shape.runs).toEqual([-3, 6, -3]);
    // 12 of the 924 orders of six and six have three runs or fewer.
    near(shape.chance, 12 / 924, 1e-12);
    const rates = shape.thirds.map((third) => perDayIn(third, 'cm'));
    // From their heights on days 7, 28, 63 and 84.
    [80.17 / 21, 149 / 35, 7.4 / 21].forEach((rate, index) => near(rates[index]!, rate, 1e-12));
  });

  it('of chick 1 of Crowder & Hand 1990, which gained more and more, is speeding up', () => {
    const chick = realLogs.find(({ label }) => label.startsWith('ChickWeight chick 1 '))!;
    expect(valueOf(shapeOf(chick.points)).kind).toBe('speeding-up');
  });

  it('is named by the direction of the whole change', () => {
    expect(shaped((day) => day * day * 0.1).kind).toBe('speeding-up');
    expect(shaped((day) => 30 - 30 * Math.exp(-day / 9)).kind).toBe('slowing-down');
    expect(shaped((day) => 10 + 30 * Math.exp(-day / 9)).kind).toBe('slowing-down');
    expect(shaped((day) => 30 / (1 + Math.exp((13 - day) / 3))).kind).toBe('slow-fast-slow');
    expect(shaped((day) => ((day - 13) / 6) ** 3 + 12).kind).toBe('fast-slow-fast');
  });

  it('of a straight log shows no curve, even with one wild reading in it', () => {
    expect(shaped((day) => day)).toMatchObject({ kind: 'no-curve-seen', runs: [], chance: 1 });
    // Were the wild reading to tilt the line, the others would seem to bend around it.
    const wild = shaped((day) => (day === 20 ? 50.8 : day));
    expect(wild).toMatchObject({ kind: 'no-curve-seen', runs: [1] });
    expect(shaped(() => 7)).toMatchObject({ kind: 'no-curve-seen', runs: [] });
  });

  it('needs as much as a trend does', () => {
    expect(shapeOf(pointsOn([0, 9], [1, 2]))).toEqual({
      ok: false,
      error: { kind: 'too-few', have: 2, need: 5 },
    });
  });

  it('is seldom a curve by noise alone, and mostly found in three weeks of an S', () => {
    // Simulated with a fixed seed: noise of 0.35 cm, read to whole centimetres on school days.
    const random = randomFrom(20260302);
    const curvesIn = (plants: number, heightOf: () => (day: number) => number): number => {
      const schoolDays = Array.from({ length: 22 }, (_, day) => day).filter((day) => day % 7 < 5);
      const curved = Array.from({ length: plants }, () => {
        const height = heightOf();
        const heights = schoolDays.map((day) =>
          Math.max(0, Math.round(height(day) + 0.35 * noise(random))),
        );
        return valueOf(shapeOf(pointsOn(schoolDays, heights))).kind !== 'no-curve-seen';
      });
      return curved.filter(Boolean).length / plants;
    };
    const straight = () => {
      const perDay = 0.5 + 1.5 * random();
      return (day: number) => 2 + perDay * day;
    };
    const sShaped = () => {
      const [final, middle, width] = [15 + 30 * random(), 6 + 5 * random(), 2 + 2 * random()];
      return (day: number) => final / (1 + Math.exp((middle - day) / width));
    };
    expect(curvesIn(500, straight)).toBeLessThan(0.06);
    expect(curvesIn(500, sShaped)).toBeGreaterThan(0.8);
  });
});

describe('the chance of so few runs', () => {
  it('is what counting every order of the signs gives', () => {
    for (let above = 1; above <= 6; above += 1) {
      for (let below = 1; below <= 6; below += 1) {
        const runCounts = ordersOf(above, below).map(runsIn);
        for (let runs = 1; runs <= above + below; runs += 1) {
          const asFew = runCounts.filter((count) => count <= runs).length;
          near(chanceOfSoFewRuns(runs, above, below), asFew / runCounts.length, 1e-12);
        }
      }
    }
  });

  it('adds up to the mean number of runs of Wald & Wolfowitz 1940, for long logs too', () => {
    for (const [above, below] of [
      [10, 10],
      [30, 12],
      [600, 700],
    ] as const) {
      const total = above + below;
      let mean = 0;
      for (let runs = 0; runs < total; runs += 1) {
        mean += 1 - chanceOfSoFewRuns(runs, above, below);
      }
      near(mean, 1 + (2 * above * below) / total, 1e-9);
    }
  });

  it('is certain where all signs are equal', () => {
    expect(chanceOfSoFewRuns(1, 5, 0)).toBe(1);
    expect(chanceOfSoFewRuns(0, 0, 0)).toBe(1);
  });
});

const ordersOf = (above: number, below: number): readonly string[] => {
  if (above + below === 0) return [''];
  return [
    ...(above > 0 ? ordersOf(above - 1, below).map((rest) => `+${rest}`) : []),
    ...(below > 0 ? ordersOf(above, below - 1).map((rest) => `-${rest}`) : []),
  ];
};

const runsIn = (signs: string): number => signs.match(/\++|-+/g)?.length ?? 0;

/** A fixed stream of numbers from 0 to 1 (mulberry32). */
const randomFrom = (seed: number) => {
  let state = seed;
  return (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
};

const noise = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
