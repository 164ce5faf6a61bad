import { describe, expect, test } from 'vitest';
import { civilDay } from '#core/calendar';
import { decodeEntry, foldEntries, stampOf, type EntryDraft, type Reading } from '#core/journal';
import {
  correctionDraft,
  isUnchanged,
  longestWhy,
  takingBackDraft,
  type FixedReading,
} from '../../../src/lib/ui/log/line-drafts';
import { writtenDay } from '../../../src/lib/ui/log/written-day';
import { anId, bean, begun, read, took, written } from '../../core/journal/entries';

const day = civilDay('2026-03-04');
const readingAfter = (...drafts: readonly EntryDraft[]): Reading => {
  const more = drafts.map((draft, index) => written(20 + index, draft));
  const notebook = foldEntries([...begun, took(10, day, 8), ...more]);
  return notebook.logBySpecimen.get(bean)!.readings[0]!;
};
const old = Object.freeze(readingAfter());
const as = (change: Partial<FixedReading>): FixedReading => ({
  ...{ day, time: null, all: [read(8)], spanDays: 1 },
  ...change,
});

describe('a correction', () => {
  test.each([
    ['the number', as({ all: [read(5)] })],
    ['the unit', as({ all: [read(8, 'in', '1 in')] })],
    ['the day', as({ day: civilDay('2026-03-05') })],
    ['the time', as({ time: '08:05' as never })],
    ['the days it covers', as({ spanDays: 3 })],
    ['how often it was read', as({ all: [read(8), read(7), read(9)] })],
  ])('of %s is a change, and reads back as it was meant', (_, to) => {
    expect(isUnchanged(old, to)).toBe(false);
    const draft = correctionDraft(old, to, '');
    expect(isUnchanged(readingAfter(draft), to)).toBe(true);
    expect(readingAfter(draft).crossedOut).toMatchObject([{ day, counted: read(8) }]);
  });

  test('to what stands there is no change', () => {
    expect(isUnchanged(old, as({}))).toBe(true);
  });

  test('keeps a reason as long as a journal can, and none where none was given', () => {
    const to = as({ all: [read(5)] });
    expect(correctionDraft(old, to, '   ')).not.toHaveProperty('why');
    const draft = correctionDraft(old, to, ` ${'x'.repeat(longestWhy + 40)}`);
    expect(decodeEntry(written(20, draft)).ok).toBe(true);
    expect(takingBackDraft(anId(10), ' ours ')).toEqual({
      ...{ kind: 'entry-taken-back', entry: anId(10), why: 'ours' },
    });
  });
});

describe('the day a line was written', () => {
  test('is the family’s day, not the day in Greenwich', () => {
    const stamp = stampOf(Date.UTC(2026, 2, 5, 3));
    expect(writtenDay(stamp, 'UTC')).toBe('2026-03-05');
    expect(writtenDay(stamp, 'America/New_York')).toBe('2026-03-04');
  });

  test('is left out where a device’s clock stood in another century', () => {
    expect(writtenDay(stampOf(Date.UTC(2500, 0, 1)), 'UTC')).toBeNull();
  });
});
