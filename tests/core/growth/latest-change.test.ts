import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { latestChange, longEnoughChanges, minimumGapDays } from '#core/growth';
import { point, pointsOn } from './log-points';
import { valueOf } from './near';

const said = (...points: Parameters<typeof latestChange>) => {
  const { from, to, exact } = valueOf(latestChange(...points));
  return [from.day, to.day, exact];
};
const cm = 10_000_000;

describe('the latest change that can be told', () => {
  it('ends at the newest reading and begins far enough before it', () => {
    expect(said(pointsOn([0, 1, 2, 3, 4], [1, 2, 4, 6, 7]))).toEqual([
      ...['2026-03-03', '2026-03-06', 5 * cm],
    ]);
  });

  it('waits five days for whole inches', () => {
    expect(said(pointsOn([0, 1, 3, 4, 6], [1, 1, 2, 2, 3], 'in', '1 in'))).toEqual([
      ...['2026-03-03', '2026-03-08', 50_800_000],
    ]);
  });

  it('tells a plant that stayed, and one that became shorter', () => {
    expect(said(pointsOn([0, 3], [5, 5]))[2]).toBe(0);
    expect(said(pointsOn([0, 3], [5, 4]))[2]).toBe(-cm);
  });

  it('never subtracts inches from centimetres: it goes back to the last pair in one unit', () => {
    const points = [...pointsOn([0, 3], [4, 6]), point('2026-03-09', 3, 'in', '1/2 in')];
    expect(said(points)).toEqual(['2026-03-02', '2026-03-05', 2 * cm]);
  });

  it('says that units are mixed when no two readings share one', () => {
    const points = [point('2026-03-02', 4, 'cm', '1 cm'), point('2026-03-09', 3, 'in', '1/2 in')];
    expect(latestChange(points)).toEqual({ ok: false, error: { kind: 'units-mixed' } });
  });

  it('says how many readings there are when there are too few', () => {
    expect(latestChange(pointsOn([0], [4]))).toMatchObject({ error: { kind: 'too-few', have: 1 } });
    expect(latestChange([])).toMatchObject({ error: { kind: 'too-few', have: 0 } });
  });

  it('counts several readings of one day as one', () => {
    expect(latestChange(pointsOn([0, 0, 0], [4, 5, 6]))).toMatchObject({
      error: { kind: 'too-few', have: 1 },
    });
  });

  it('says when to measure next while the readings lie too close', () => {
    expect(latestChange(pointsOn([0, 1], [4, 5]))).toEqual({
      ok: false,
      error: { kind: 'too-soon', measureOn: '2026-03-05' },
    });
    expect(latestChange(pointsOn([0, 1], [2, 2], 'in', '1 in'))).toMatchObject({
      error: { measureOn: '2026-03-07' },
    });
  });
});

describe('a log in steps long enough to trust', () => {
  it('goes from reading to reading far enough apart, and leaves the rest at the end', () => {
    const changes = longEnoughChanges(pointsOn([0, 1, 2, 3, 4, 7, 8], [1, 2, 3, 4, 5, 8, 9]));
    expect(changes.map(({ gapDays, exact }) => [gapDays, exact / cm])).toEqual([
      [3, 3],
      [4, 4],
    ]);
  });

  it('never has a step that is too short, and its steps join end to end', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 0, max: 60 }), { maxLength: 25 }), (days) => {
        const changes = longEnoughChanges(
          pointsOn(
            days,
            days.map((day) => day + 1),
          ),
        );
        changes.forEach((change, index) => {
          expect(change.gapDays).toBeGreaterThanOrEqual(minimumGapDays('1 cm'));
          if (index > 0) expect(change.from).toEqual(changes[index - 1]!.to);
        });
      }),
      { seed: 20260302 },
    );
  });
});
