import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, civilDay } from '#core/calendar';
import { writeLogCsv } from '#core/exchange';
import { foldEntries, type JournalEntry } from '#core/journal';
import { exactPerUnit, type Measured } from '#core/measure';
import { seriesOf } from '#core/series';
import { predictionBand, predictionOffer, predictionsOf } from '#core/growth';
import { bean, begun, heights, read, takenBack, took, written } from '../journal/entries';
import { marked } from '../series/bean-log';
import { idOf, other, sealed } from '../series/care-log';
import { valueOf } from './near';

const first = civilDay('2026-03-02');
const dayOf = (daysLater: number) => addDays(first, daysLater);

const lookAt = (today: string, ...entries: readonly JournalEntry[]) => {
  const notebook = foldEntries([...begun, ...entries]);
  const series = seriesOf(notebook, bean, civilDay(today))!;
  return { notebook, series, today: civilDay(today) };
};
const predictionsAt = (today: string, ...entries: readonly JournalEntry[]) => {
  const { notebook, series, today: day } = lookAt(today, ...entries);
  return predictionsOf(notebook, series, day);
};
/** Readings of the bean on the days so long after Monday 2 March 2026, in whole centimetres. */
const grown = (days: readonly number[], values: readonly number[]): readonly JournalEntry[] =>
  days.map((day, index) => took(20 + index, dayOf(day), values[index]!));
const aWeek = grown([0, 1, 2, 4, 7], [2, 3, 4, 6, 9]);

describe('a prediction', () => {
  const tuesday = '2026-03-10';
  const prediction = sealed(50, '2026-03-09', tuesday, read(10));

  it('is sealed before its day, and on its day until the reading is in', () => {
    const seal = {
      ...{ state: 'sealed', id: idOf(50), day: '2026-03-09', forDay: tuesday },
      author: '00000000-0000-7000-8000-000000000701',
    };
    expect(predictionsAt('2026-03-09', ...aWeek, prediction)).toEqual([seal]);
    expect(predictionsAt(tuesday, ...aWeek, prediction)).toEqual([seal]);
  });

  it('opens when its day is read, with the miss', () => {
    expect(predictionsAt(tuesday, ...aWeek, prediction, took(60, tuesday, 12))).toMatchObject([
      {
        ...{ state: 'open', measured: read(10), because: 'it grew this week', reading: read(12) },
        ...{ missExact: -20_000_000, direction: 'too-short', size: 'close' },
      },
    ]);
  });

  it('opens when its day has passed without a reading, with nothing to compare', () => {
    expect(predictionsAt('2026-03-11', ...aWeek, prediction)).toMatchObject([
      { state: 'open', measured: read(10), reading: null, missExact: null, size: null },
    ]);
  });

  it('is not opened by a stamp, a reading of another day or one that was taken back', () => {
    const stateAfter = (...entries: readonly JournalEntry[]) =>
      predictionsAt(tuesday, ...aWeek, prediction, ...entries)[0]?.state;
    expect(stateAfter(marked(60, tuesday, 'missed'))).toBe('sealed');
    expect(stateAfter(took(60, '2026-03-11', 12))).toBe('sealed');
    expect(stateAfter(took(60, tuesday, 12), takenBack(61, 60))).toBe('sealed');
  });

  it('is sealed again when the clock is set back', () => {
    const entries = [...aWeek, prediction, took(60, tuesday, 12)];
    expect(predictionsAt(tuesday, ...entries)[0]?.state).toBe('open');
    expect(predictionsAt('2026-03-09', ...entries)[0]?.state).toBe('sealed');
  });

  it('is held against the middle reading of its day, whoever read it', () => {
    const readings = [12, 18, 11].map((value, index) =>
      took(60 + index, tuesday, value, { minute: 60 + index, author: other }),
    );
    expect(predictionsAt(tuesday, ...aWeek, prediction, ...readings)).toMatchObject([
      { reading: read(12) },
    ]);
  });

  it('that was taken back is not listed', () => {
    expect(predictionsAt(tuesday, prediction, takenBack(51, 50))).toEqual([]);
  });
});

describe('the seal', () => {
  const someLength = fc.nat(9999).map((mm): Measured => {
    return { text: `${mm / 10}`, unit: 'cm', mark: '1 mm', exact: mm * 1_000_000 };
  });
  const someCase = fc.record({
    one: someLength,
    other: someLength,
    because: fc.string({ maxLength: 60 }),
    otherBecause: fc.string({ maxLength: 60 }),
    forDay: fc.integer({ min: -3, max: 30 }),
    today: fc.integer({ min: -3, max: 30 }),
    readOn: fc.uniqueArray(fc.nat(25), { maxLength: 8 }),
  });

  it('lets nothing through: whatever the number and the because, a sealed one looks the same', () => {
    let sealedSeen = 0;
    let openSeen = 0;
    fc.assert(
      fc.property(someCase, (each) => {
        const readings = each.readOn.map((day, index) => took(20 + index, dayOf(day), 4));
        const seen = (measured: Measured, because: string) =>
          predictionsAt(
            dayOf(each.today),
            ...readings,
            sealed(50, first, dayOf(each.forDay), measured, because),
          );
        const [prediction] = seen(each.one, each.because);
        if (prediction?.state === 'open') {
          openSeen += 1;
          expect(prediction).toMatchObject({ measured: each.one, because: each.because });
          return;
        }
        sealedSeen += 1;
        expect(JSON.stringify(seen(each.other, each.otherBecause))).toBe(
          JSON.stringify([prediction]),
        );
        expect(Reflect.ownKeys(prediction!)).toEqual(['state', 'id', 'day', 'forDay', 'author']);
      }),
      { seed: 7601, numRuns: 300 },
    );
    expect(Math.min(sealedSeen, openSeen)).toBeGreaterThan(50);
  });

  it('stays shut before the day and on a day without a reading, and only then', () => {
    fc.assert(
      fc.property(someCase, ({ one, forDay, today, readOn }) => {
        const readings = readOn.map((day, index) => took(20 + index, dayOf(day), 4));
        const entry = sealed(50, first, dayOf(forDay), one);
        const [prediction] = predictionsAt(dayOf(today), ...readings, entry);
        const hasCome = today > forDay || (today === forDay && readOn.includes(forDay));
        expect(prediction?.state).toBe(hasCome ? 'open' : 'sealed');
      }),
      { seed: 7602, numRuns: 300 },
    );
  });

  it('holds in the table of the log too, which a family may open on any day', () => {
    const csv = (measured: Measured, because: string) =>
      writeLogCsv(
        foldEntries([...begun, ...aWeek, sealed(50, first, dayOf(3), measured, because)]),
      );
    const without = writeLogCsv(foldEntries([...begun, ...aWeek]));
    expect(csv(read(77), 'because of the marker')).toBe(without);
  });
});

describe('the offer to predict', () => {
  const offer = (today: string, ...entries: readonly JournalEntry[]) => {
    const { series, today: day } = lookAt(today, ...entries);
    return predictionOffer(series, day);
  };
  const monday = '2026-03-09';

  it('is of the next three days after a reading, and names those the plan asks for', () => {
    expect(valueOf(offer('2026-03-12', ...grown([0, 1, 2, 7, 10], [2, 3, 4, 9, 11])))).toEqual([
      { day: '2026-03-13', daysAhead: 1, planned: true },
      { day: '2026-03-14', daysAhead: 2, planned: false },
      { day: '2026-03-15', daysAhead: 3, planned: false },
    ]);
  });

  it('never reaches more than three days past the newest reading', () => {
    const daysAt = (today: string) => valueOf(offer(today, ...aWeek)).map(({ day }) => day);
    expect(daysAt('2026-03-10')).toEqual(['2026-03-11', '2026-03-12']);
    expect(daysAt('2026-03-11')).toEqual(['2026-03-12']);
    expect(offer('2026-03-12', ...aWeek)).toEqual({
      ok: false,
      error: { kind: 'measure-first', lastDay: monday },
    });
  });

  it('needs five days read, over seven days', () => {
    expect(offer(monday, ...aWeek.slice(0, 4))).toEqual({
      ok: false,
      error: { kind: 'too-few', have: 4, need: 5 },
    });
    expect(offer('2026-03-08', ...grown([0, 1, 2, 4, 6], [2, 3, 4, 6, 8]))).toEqual({
      ok: false,
      error: { kind: 'too-short', days: 6, need: 7 },
    });
    const thriceADay = grown([0, 0, 0, 7, 7], [2, 2, 2, 9, 9]);
    expect(offer(monday, ...thriceADay)).toMatchObject({ error: { kind: 'too-few', have: 2 } });
  });

  it('does not count a day to come as read', () => {
    expect(offer('2026-03-08', ...aWeek)).toMatchObject({ error: { kind: 'too-few', have: 4 } });
  });

  it('is not made for a log that ended, or a plant that was marked lost', () => {
    const ended = { ok: false, error: { kind: 'ended' } };
    const lost = marked(60, monday, 'lost');
    const finished = written(60, {
      kind: 'specimen-ended',
      ...{ specimen: bean, day: civilDay(monday), how: 'finished' as const },
    });
    expect(offer(monday, ...aWeek, lost)).toEqual(ended);
    expect(offer(monday, ...aWeek, finished)).toEqual(ended);
    expect(offer(monday, ...aWeek, marked(60, '2026-03-06', 'lost')).ok).toBe(true);
  });

  it('is made for heights and lengths, not for rain, shadows and words', () => {
    const { series, today } = lookAt(monday, ...aWeek);
    const kindOf = (quantity: 'plant-height' | 'length' | 'rain' | 'shadow' | 'daily-kind') => {
      const investigation = { ...series.investigation, quantity };
      const made = predictionOffer({ ...series, investigation }, today);
      return made.ok ? 'offered' : made.error.kind;
    };
    expect(kindOf('length')).toBe('offered');
    for (const quantity of ['rain', 'shadow', 'daily-kind'] as const) {
      expect(kindOf(quantity)).toBe('not-this-quantity');
    }
  });

  it('is not made for counted things', () => {
    const counts = [0, 1, 2, 4, 7].map((day, index) =>
      written(20 + index, {
        kind: 'reading-taken',
        ...{ specimen: bean, day: dayOf(day), measured: read(4, 'count', '1') },
      }),
    );
    expect(offer(monday, ...counts)).toMatchObject({ error: { kind: 'too-few', have: 0 } });
  });
});

/** Worked out by hand. */
describe('the band a grown-up holds a prediction against', () => {
  const band = (forDay: string, ...entries: readonly JournalEntry[]) =>
    predictionBand(lookAt(forDay, ...entries).series, civilDay(forDay));
  const cm = (value: number): number => value * exactPerUnit('cm');

  it('reaches from no growth to twice the growth of late', () => {
    // The last three growths per day are 1, 1 and 1 cm; the week rises by 1 cm a day.
    expect(valueOf(band('2026-03-11', ...aWeek))).toEqual({
      ...{ lastDay: '2026-03-09', lastExact: cm(9), gapDays: 2 },
      ...{ lowExact: cm(9), highExact: cm(13), straightExact: cm(11) },
    });
  });

  it('takes the middle of the last three growths per day, with their gaps', () => {
    // 1, 4 and 2 cm over 1, 2 and 3 days: 1, 2 and 2/3 cm a day, the middle one 1.
    const uneven = grown([0, 1, 2, 4, 7], [1, 2, 3, 7, 9]);
    expect(valueOf(band('2026-03-10', ...uneven)).highExact).toBe(cm(11));
  });

  it('does not fall when the plant drooped', () => {
    const drooping = grown([0, 1, 2, 4, 7], [9, 8, 7, 6, 5]);
    const found = valueOf(band('2026-03-10', ...drooping));
    expect([found.lowExact, found.highExact]).toEqual([cm(5), cm(5)]);
    expect(found.straightExact).toBeLessThan(cm(5));
  });

  it('does not look at the day itself, nor after it', () => {
    const later = [took(60, '2026-03-10', 40), took(61, '2026-03-11', 41)];
    expect(band('2026-03-10', ...aWeek, ...later)).toEqual(band('2026-03-10', ...aWeek));
  });

  it('needs what an offer needs, and looks three days ahead at most', () => {
    expect(band('2026-03-06', ...aWeek)).toMatchObject({ error: { kind: 'too-few', have: 3 } });
    expect(band('2026-03-12', ...aWeek).ok).toBe(true);
    expect(band('2026-03-13', ...aWeek)).toEqual({
      ok: false,
      error: { kind: 'too-far', gapDays: 4, most: 3 },
    });
  });

  it('names the investigation it is not for', () => {
    const { series } = lookAt('2026-03-09', ...aWeek);
    expect(series.investigation.id).toBe(heights);
    const rain = {
      ...series,
      investigation: { ...series.investigation, quantity: 'rain' as const },
    };
    expect(predictionBand(rain, civilDay('2026-03-10'))).toMatchObject({
      error: { kind: 'not-this-quantity', quantity: 'rain' },
    });
  });
});
