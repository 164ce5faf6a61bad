import { civilDay } from '#core/calendar';
import {
  foldEntries,
  type DayState,
  type Entry,
  type EntryDraft,
  type EntryId,
  type JournalEntry,
} from '#core/journal';
import { seriesOf, type Series } from '#core/series';
import { anId, bean, begun, written } from '../journal/entries';

/** The series of the one bean, from Monday 2 March 2026 on. */
export const seriesAt = (today: string, ...entries: readonly JournalEntry[]): Series => {
  const series = seriesOf(foldEntries([...begun, ...entries]), bean, civilDay(today));
  if (!series) throw new Error('There is no such series');
  return series;
};

export const onDay = (series: Series, day: string): Series['days'][number] => {
  const found = series.days.find((each) => each.day === day);
  if (!found) throw new Error(`${day} is not in the series`);
  return found;
};

export const marked = (number: number, day: string, state: DayState, minute = number): Entry =>
  written(number, { kind: 'day-marked', specimen: bean, day: civilDay(day), state }, { minute });

export const noted = (number: number, day: string, word: string): Entry =>
  written(number, { kind: 'kind-noted', specimen: bean, day: civilDay(day), word });

export const corrected = (
  number: number,
  reading: number,
  to: Extract<EntryDraft, { kind: 'reading-corrected' }>['to'],
): Entry => written(number, { kind: 'reading-corrected', reading: anId<EntryId>(reading), to });
