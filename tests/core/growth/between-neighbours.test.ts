import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import type { JournalEntry } from '#core/journal';
import { betweenNeighbours } from '#core/growth';
import { read, took } from '../journal/entries';
import { marked, seriesAt } from '../series/bean-log';
import { tookIn } from '../series/care-log';
import { valueOf } from './near';

const between = (day: string, ...entries: readonly JournalEntry[]) =>
  betweenNeighbours(seriesAt('2026-03-13', ...entries), civilDay(day));
const monday = '2026-03-09';
const tuesday = '2026-03-10';
const wednesday = '2026-03-11';

describe('a day that was not measured', () => {
  it('lies, in words, between its two neighbours', () => {
    expect(valueOf(between(tuesday, took(10, monday, 8), took(11, wednesday, 10)))).toEqual({
      before: { day: monday, measured: read(8) },
      after: { day: wednesday, measured: read(10) },
      gapDays: 2,
      lowExact: 80_000_000,
      highExact: 100_000_000,
      unitsMixed: false,
    });
  });

  it.each([
    ['2026-03-12', 3],
    ['2026-03-13', 4],
  ])('has neighbours three days apart at most: until %s', (until, gapDays) => {
    const found = between(tuesday, took(10, monday, 8), took(11, until, 10));
    expect(found.ok).toBe(gapDays <= 3);
    if (!found.ok) expect(found.error).toEqual({ kind: 'too-far', gapDays, most: 3 });
  });

  it('keeps the band the right way up when the plant drooped, and says when units are mixed', () => {
    const drooped = valueOf(between(tuesday, took(10, monday, 8), took(11, wednesday, 7)));
    expect([drooped.lowExact, drooped.highExact]).toEqual([70_000_000, 80_000_000]);
    const inches = tookIn(11, wednesday, read(4, 'in', '1 in'));
    expect(valueOf(between(tuesday, took(10, monday, 8), inches)).unitsMixed).toBe(true);
  });

  it('takes the middle reading of each neighbour', () => {
    const thrice = [8, 20, 9].map((value, index) => took(10 + index, monday, value));
    expect(valueOf(between(tuesday, ...thrice, took(20, wednesday, 10))).before.measured).toEqual(
      read(9),
    );
  });

  it('says nothing with a neighbour on one side only', () => {
    expect(between(tuesday, took(10, monday, 8))).toEqual({
      ok: false,
      error: { kind: 'no-neighbour' },
    });
  });

  it('says nothing about a day that was measured', () => {
    expect(between(monday, took(10, monday, 8))).toMatchObject({ error: { kind: 'measured' } });
  });

  it.each(['not-up-yet', 'lost'] as const)('says nothing about a plant that was %s', (state) => {
    const entries = [took(10, monday, 8), marked(11, tuesday, state), took(12, wednesday, 10)];
    expect(between(tuesday, ...entries)).toMatchObject({ error: { kind: 'nothing-to-measure' } });
  });

  it('is spoken about when it was marked as missed', () => {
    const entries = [took(10, monday, 8), marked(11, tuesday, 'missed'), took(12, wednesday, 10)];
    expect(between(tuesday, ...entries).ok).toBe(true);
  });

  it('is never guessed at for rain', () => {
    const series = seriesAt('2026-03-13', took(10, monday, 8), took(11, wednesday, 10));
    const rain = {
      ...series,
      investigation: { ...series.investigation, quantity: 'rain' as const },
    };
    expect(betweenNeighbours(rain, civilDay(tuesday))).toMatchObject({
      error: { kind: 'not-this-quantity', quantity: 'rain' },
    });
  });
});
