import { describe, expect, test } from 'vitest';
import { civilDay } from '#core/calendar';
import type { BlankRow, BlanksRow } from '#core/series';
import {
  blankWords,
  daysWords,
  gapWords,
  logWords,
  monthTitle,
  stretchDays,
  stretchWords,
  wasWords,
  whySuggestions,
  workWords,
} from '../../../src/lib/ui/words/log-words';
import { read } from '../../core/journal/entries';

const blank = (more: Partial<BlankRow>): BlankRow => ({
  ...{ kind: 'blank', key: 'blank', day: civilDay('2026-03-07') },
  ...{ planned: true, opensDay: true, alone: true },
  ...more,
});

describe('what the log page says to a child', () => {
  const sentences = [
    ...Object.values(logWords),
    ...Object.values(workWords),
    ...Object.values(whySuggestions).flat(),
  ].flatMap((text) => text.split(/(?<=[.?])\s/));

  test.each(sentences)('“%s” has ten words or fewer', (sentence) => {
    expect(sentence.split(/\s+/).length).toBeLessThanOrEqual(10);
  });

  test('never calls anything wrong', () => {
    expect(sentences.filter((sentence) => /wrong|mistake|error|bad/i.test(sentence))).toEqual([]);
  });
});

describe('the words of the log', () => {
  test('say a gap in days', () => {
    expect(gapWords(3)).toBe('3 days since the last one');
    expect(daysWords(1)).toBe('1 day');
  });

  test('tell a blank planned day from a day off, and from one with other lines', () => {
    expect(blankWords(blank({}), 'plant-height')).toBe('nothing written');
    expect(blankWords(blank({ planned: false }), 'plant-height')).toBe('a day off');
    expect(blankWords(blank({ alone: false }), 'plant-height')).toBe('no number');
    expect(blankWords(blank({ alone: false }), 'daily-kind')).toBe('no word');
  });

  test('name a folded stretch by its days, and the years where they differ', () => {
    const stretch = (day: string, lastDay: string): BlanksRow => ({
      ...{ kind: 'blanks', key: 'blanks', planned: true, opensDay: true },
      ...{ day: civilDay(day), lastDay: civilDay(lastDay), dayCount: 12, canOpen: true },
    });
    expect(stretchWords(stretch('2026-03-04', '2026-03-15'))).toBe('12 days with nothing written');
    expect(stretchDays(stretch('2026-03-04', '2026-03-15'))).toBe('Wed 4 Mar to Sun 15 Mar');
    expect(stretchDays(stretch('2025-12-25', '2026-01-05'))).toBe(
      'Thursday 25 December 2025 to Monday 5 January 2026',
    );
  });

  test('head a month with its name and year', () => {
    expect(monthTitle('2024-02')).toBe('February 2024');
  });

  test('tell what else a correction changed', () => {
    const now = { day: civilDay('2026-03-04'), counted: read(5), all: [read(5)], spanDays: 1 };
    expect(wasWords({ ...now, counted: read(8) }, now)).toBe('8 cm');
    const moved = { ...now, day: civilDay('2026-03-03'), time: '09:00' as never, spanDays: 2 };
    expect(wasWords(moved, now)).toBe('5 cm for 2 days on Tue 3 Mar at 09:00');
  });
});
