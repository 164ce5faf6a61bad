import { describe, expect, it } from 'vitest';
import { addDays, civilDay, daysBetween, type CivilDay } from '#core/calendar';
import { foldEntries, type Entry, type JournalEntry } from '#core/journal';
import {
  foldedOverDays,
  logMonths,
  logRows,
  notesOfSeries,
  openedUpToDays,
  type LogRow,
} from '#core/series';
import { anId, bean, begun, heights, read, takenBack, took, written } from '../journal/entries';
import { corrected, marked, noted, seriesAt } from './bean-log';

const rowsAt = (
  today: string,
  entries: readonly JournalEntry[],
  opened: readonly string[] = [],
): readonly LogRow[] => {
  const series = seriesAt(today, ...entries);
  const { notes } = foldEntries([...begun, ...entries]);
  const openedDays = new Set(opened.map((day) => civilDay(day)));
  return logRows(series, notesOfSeries(notes, series), civilDay(today), openedDays);
};

/** Rows in short: the day where it is named, the kind, and a line through it as a minus. */
const said = (rows: readonly LogRow[]): readonly string[] =>
  rows.map((row) => {
    const struck = 'struck' in row && row.struck ? ` -${row.struck}` : '';
    return `${row.opensDay ? row.day.slice(5) : '     '} ${row.kind}${struck}`;
  });

const note = (
  number: number,
  day: string,
  about: Partial<Extract<Entry, { kind: 'note-written' }>>,
) =>
  written(number, { kind: 'note-written', day: civilDay(day), text: 'the leaf opened', ...about });

describe('the rows of a log', () => {
  it('are the days in order, the oldest first, blank ones too', () => {
    expect(
      said(rowsAt('2026-03-06', [took(10, '2026-03-03', 1), marked(11, '2026-03-05', 'missed')])),
    ).toEqual(['03-02 blank', '03-03 reading', '03-04 blank', '03-05 mark', '03-06 blank']);
  });

  it('say the gap on the first reading of a day only', () => {
    const rows = rowsAt('2026-03-06', [
      took(10, '2026-03-03', 1),
      took(11, '2026-03-06', 2),
      took(12, '2026-03-06', 3),
    ]);
    expect(rows.flatMap((row) => (row.kind === 'reading' ? [row.gapDays] : []))).toEqual([
      ...[null, 3, null],
    ]);
  });

  it('keep what was taken back, under what counts', () => {
    const entries = [took(10, '2026-03-02', 1), took(11, '2026-03-02', 2), takenBack(12, 10)];
    expect(said(rowsAt('2026-03-02', entries))).toEqual([
      '03-02 reading',
      '      reading -taken-back',
    ]);
  });

  it('offer the day again when all it had was taken back', () => {
    const entries = [took(10, '2026-03-02', 1), takenBack(11, 10)];
    const rows = rowsAt('2026-03-02', entries);
    expect(said(rows)).toEqual(['03-02 blank', '      reading -taken-back']);
    expect(rows[0]).toMatchObject({ kind: 'blank', alone: false });
  });

  it('cross out a missed stamp on a day that then got a number, and leave the others', () => {
    const day = '2026-03-02';
    expect(said(rowsAt(day, [marked(10, day, 'missed'), took(11, day, 1)]))).toEqual([
      '03-02 reading',
      '      mark -overtaken',
    ]);
    expect(said(rowsAt(day, [took(10, day, 1), marked(11, day, 'lost')]))).toEqual([
      '03-02 reading',
      '      mark',
    ]);
    expect(said(rowsAt(day, [marked(10, day, 'missed'), marked(11, day, 'not-up-yet')]))).toEqual([
      '03-02 mark',
      '      mark -overtaken',
    ]);
  });

  it('leave a missed hour beside the numbers of the other hours', () => {
    const at = (number: number, time: string) =>
      written(number, {
        ...{ kind: 'day-marked', specimen: bean, day: civilDay('2026-03-02') },
        ...{ state: 'missed', time: time as never },
      });
    const entries = [took(10, '2026-03-02', 1), at(11, '10:00'), at(12, '11:00')];
    expect(said(rowsAt('2026-03-02', entries))).toEqual([
      ...['03-02 reading', '      mark', '      mark'],
    ]);
  });

  it('show two words of one day, and the one that was changed', () => {
    const entries = [
      noted(10, '2026-03-02', 'sun'),
      noted(11, '2026-03-02', 'rain'),
      takenBack(12, 10),
      noted(13, '2026-03-02', 'cloud'),
    ];
    expect(said(rowsAt('2026-03-02', entries))).toEqual([
      '03-02 word',
      '      word',
      '      word -taken-back',
    ]);
  });

  it('leave a crossed-out line on the day a correction moved a reading from', () => {
    const to = { day: civilDay('2026-03-04'), measured: read(4) };
    const rows = rowsAt('2026-03-04', [took(10, '2026-03-03', 4), corrected(11, 10, to)]);
    expect(said(rows)).toEqual(['03-02 blank', '03-03 blank', '      moved-away', '03-04 reading']);
  });

  it('name a day once that a reading was moved from and back to and from again', () => {
    const on = (day: string) => ({ day: civilDay(day), measured: read(4) });
    const rows = rowsAt('2026-03-04', [
      took(10, '2026-03-03', 4),
      corrected(11, 10, on('2026-03-04')),
      corrected(12, 10, on('2026-03-03')),
      corrected(13, 10, on('2026-03-04')),
    ]);
    expect(rows.filter((row) => row.kind === 'moved-away').map((row) => row.day)).toEqual([
      '2026-03-03',
    ]);
    expect(new Set(rows.map((row) => row.key)).size).toBe(rows.length);
  });

  it('hold the notes of the specimen and of its investigation, and nobody else’s', () => {
    const entries = [
      note(10, '2026-03-02', { specimen: bean, investigation: heights }),
      note(11, '2026-03-03', { investigation: heights }),
      note(12, '2026-03-04', { specimen: anId(999), investigation: heights }),
      note(13, '2026-03-04', {}),
      note(14, '2026-03-04', { specimen: bean }),
      takenBack(15, 14),
    ];
    expect(said(rowsAt('2026-03-05', entries))).toEqual([
      '03-02 blank',
      '      note',
      '03-03 blank',
      '      note',
      '03-04 blank',
      '      note -taken-back',
      '03-05 blank',
    ]);
  });

  it('go out to a note that is dated beyond the series, with what lies between as one row', () => {
    const rows = rowsAt('2026-03-02', [
      took(10, '2026-03-02', 1),
      note(11, '2026-06-01', { specimen: bean }),
    ]);
    expect(said(rows)).toEqual(['03-02 reading', '03-03 blanks', '06-01 blank', '      note']);
    expect(rows[1]).toMatchObject({ lastDay: '2026-05-31', dayCount: 90, canOpen: false });
  });

  it('have a key each, whatever was written', () => {
    const entries = [
      took(10, '2026-03-02', 1),
      took(11, '2026-03-02', 2),
      marked(12, '2026-03-02', 'lost'),
      takenBack(13, 11),
      note(14, '2026-03-02', { specimen: bean }),
      noted(15, '2026-03-02', 'sun'),
    ];
    const keys = rowsAt('2026-03-20', entries).map((row) => row.key);
    expect(new Set(keys).size).toBe(keys.length);
  });
});

describe('a blank stretch', () => {
  const allWeek = written(5, {
    kind: 'investigation-changed',
    investigation: heights,
    to: { weekdays: [1, 2, 3, 4, 5, 6, 7] },
  });
  const around = (blankDays: number, opened: readonly string[] = []): readonly LogRow[] => {
    const after = addDays(civilDay('2026-03-02'), blankDays + 1);
    const entries = [allWeek, took(10, '2026-03-02', 1), took(11, after, 2)];
    return rowsAt(after, entries, opened).slice(1, -1);
  };

  it(`of ${foldedOverDays} days is laid out, and of one more is folded`, () => {
    expect(around(foldedOverDays).map((row) => row.kind)).toEqual(
      Array.from({ length: foldedOverDays }, () => 'blank'),
    );
    expect(around(foldedOverDays + 1)).toMatchObject([
      { kind: 'blanks', day: '2026-03-03', lastDay: '2026-03-10', dayCount: 8, canOpen: true },
    ]);
  });

  it('that was opened is laid out day by day', () => {
    const rows = around(20, ['2026-03-03']);
    expect(rows.map((row) => row.kind)).toEqual(Array.from({ length: 20 }, () => 'blank'));
  });

  it('of many months says how long it is, and cannot be opened', () => {
    const [row] = around(openedUpToDays + 1);
    expect(row).toMatchObject({ dayCount: openedUpToDays + 1, canOpen: false });
    expect(around(openedUpToDays)[0]).toMatchObject({ canOpen: true });
  });

  it('never hides today', () => {
    expect(said(rowsAt('2026-03-14', [allWeek]))).toEqual(['03-02 blanks', '03-14 blank']);
  });

  it('leaves a weekend in sight, and folds the days between of a weekly plan', () => {
    const school = rowsAt('2026-03-09', [took(10, '2026-03-06', 1), took(11, '2026-03-09', 2)]);
    expect(said(school).slice(-4)).toEqual([
      ...['03-06 reading', '03-07 blank', '03-08 blank', '03-09 reading'],
    ]);
    expect(school.filter((row) => row.kind === 'blank' && !row.planned)).toHaveLength(2);
    const mondays = written(6, {
      kind: 'investigation-changed',
      investigation: heights,
      to: { weekdays: [1] },
    });
    const weekly = [mondays, took(10, '2026-03-02', 1), took(11, '2026-03-09', 2)];
    expect(said(rowsAt('2026-03-09', weekly))).toEqual([
      ...['03-02 reading', '03-03 blanks', '03-09 reading'],
    ]);
  });
});

describe('the months of a log', () => {
  it('hold every row once, in order, and leave out a month that is folded away', () => {
    const entries = [took(10, '2026-03-30', 1), took(11, '2026-05-02', 2)];
    const rows = rowsAt('2026-05-02', entries);
    const months = logMonths(rows);
    expect(months.flatMap((month) => month.rows)).toEqual(rows);
    expect(months.map((month) => month.month)).toEqual(['2026-03', '2026-05']);
  });

  it('of 10 000 readings hold each reading once', () => {
    const start = civilDay('2000-01-01');
    const days = Array.from({ length: 10_000 }, (_, index): CivilDay => addDays(start, index));
    const entries = days.map((day, index) => took(1000 + index, day, index % 40));
    const months = logMonths(rowsAt('2026-03-04', entries));
    const last = addDays(start, 9999);
    // Source: counted by hand, January 2000 to May 2027 is 27 years and 5 months.
    expect(last).toBe('2027-05-18');
    expect(months).toHaveLength(27 * 12 + 5);
    expect(months.flatMap((month) => month.rows)).toHaveLength(daysBetween(start, last) + 1);
  });
});
