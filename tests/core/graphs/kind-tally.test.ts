import { describe, expect, it } from 'vitest';
import { addDays, civilDay } from '#core/calendar';
import { kindTally } from '#core/graphs';
import type { Series } from '#core/series';
import { seriesWith } from './small-series';
import graphs from '../../reference/graphs.json';
import weather from '../../reference/rain_seattle.csv?raw';

/** A log of one word a day, or none. */
const kindSeries = (first: string, words: readonly (string | null)[], kinds: readonly string[]) => {
  const series = seriesWith(
    words.map(() => null),
    { first, quantity: 'daily-kind' },
  );
  return {
    ...series,
    investigation: { ...series.investigation, kinds },
    days: series.days.map((day, index) => {
      const word = words[index];
      return word
        ? { ...day, state: 'word', words: word.split('+').map((each) => ({ word: each })) }
        : day;
    }),
  } as unknown as Series;
};

const rows = weather
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => line.split(','));

describe('the tally of a daily kind', () => {
  // Counts of Seattle's weather words by month, kept in tests/reference/graphs.json (npm
  // vega-datasets 3.2.1), counted here from the daily rows of rain_seattle.csv.
  it.each(graphs.weather_counts)('of $month agrees with the counts that were published', (each) => {
    const words = rows.filter(([day]) => day!.startsWith(each.month)).map((row) => row[2]!.trim());
    const kinds = Object.keys(each.counts);
    const tally = kindTally(kindSeries(`${each.month}-01`, words, kinds));
    expect(Object.fromEntries(tally.words.map(({ word, days }) => [word, days]))).toEqual(
      each.counts,
    );
    expect(tally.daysWithWord).toBe(each.total);
  });

  it('keeps a word that never came, with 0', () => {
    expect(kindTally(kindSeries('2026-03-02', ['sun'], ['sun', 'snow'])).words).toEqual([
      { word: 'sun', days: 1 },
      { word: 'snow', days: 0 },
    ]);
  });

  it('adds a word that the plan no longer has, after the others', () => {
    const { words } = kindTally(kindSeries('2026-03-02', ['fog', 'sun'], ['sun']));
    expect(words.map(({ word }) => word)).toEqual(['sun', 'fog']);
  });

  it('names every word that came most', () => {
    const tally = kindTally(kindSeries('2026-03-02', ['sun', 'rain', 'fog', 'sun', 'rain'], []));
    expect(tally.most).toEqual(['sun', 'rain']);
  });

  it('counts a day with two words for both, and a word twice on a day once', () => {
    const tally = kindTally(kindSeries('2026-03-02', ['sun+rain', 'sun+sun'], ['sun', 'rain']));
    expect(tally.words).toEqual([
      { word: 'sun', days: 2 },
      { word: 'rain', days: 1 },
    ]);
    expect(tally.daysWithWord).toBe(2);
  });

  it('has no winner in an empty log, and counts planned days without a word', () => {
    const tally = kindTally(kindSeries('2026-03-02', [null, null], ['sun']));
    expect(tally).toMatchObject({ most: [], daysWithWord: 0, daysMissed: 2, firstDay: null });
  });

  it('runs from the first day with a word to the last', () => {
    const tally = kindTally(kindSeries('2026-03-02', [null, 'sun', 'sun', null], ['sun']));
    expect([tally.firstDay, tally.lastDay]).toEqual([
      addDays(civilDay('2026-03-02'), 1),
      addDays(civilDay('2026-03-02'), 2),
    ]);
  });
});
