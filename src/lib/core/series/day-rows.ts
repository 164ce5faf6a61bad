import type { DayMark, KindNote, Reading } from '#core/journal';
import type { ExtraLines } from './extra-lines';
import type { LogRow, Struck } from './log-row';
import type { SeriesDay } from './series';

/** The rows of one day: at least one. What counts comes first, then what is crossed out. */
export function dayRows(day: SeriesDay, extra: ExtraLines = noExtraLines): readonly LogRow[] {
  const counting = [
    ...day.readings.map((reading, index) =>
      readingRow(reading, null, index === 0 ? day.gapDays : null),
    ),
    ...day.words.map((word) => lineRow(word, null)),
    ...day.marks.filter((mark) => !isOvertaken(day, mark)).map((mark) => lineRow(mark, null)),
  ];
  const others = [
    ...extra.notes.filter((note) => !note.takenBack).map((note) => noteRow(note, null)),
    ...day.marks.filter((mark) => isOvertaken(day, mark)).map((mark) => lineRow(mark, 'overtaken')),
    ...day.crossedOut.map((line) => lineRow(line, line.takenBack ? 'taken-back' : 'overtaken')),
    ...extra.movedAway.map(({ reading, was }): Row => {
      return { kind: 'moved-away', key: `${was.by}-left-${day.day}`, reading, was };
    }),
    ...extra.notes.filter((note) => note.takenBack).map((note) => noteRow(note, 'taken-back')),
  ];
  const blank: readonly Row[] =
    counting.length > 0
      ? []
      : [{ kind: 'blank', key: `blank-${day.day}`, alone: others.length === 0 }];
  return [...blank, ...counting, ...others].map((row, index) => ({
    ...row,
    ...{ day: day.day, planned: day.planned, opensDay: index === 0 },
  }));
}

/**
 * Whether a look of that day made the mark untrue: a day with a number was not missed. That the
 * plant was lost in the evening, that the sun went in, or that one hour of the day was missed,
 * stands beside the number.
 */
const isOvertaken = (day: SeriesDay, mark: DayMark): boolean =>
  (day.state === 'number' || day.state === 'word') &&
  (mark.state === 'missed' || mark.state === 'not-up-yet') &&
  mark.time === undefined;

const lineRow = (line: Reading | KindNote | DayMark, struck: Struck): Row => {
  if ('counted' in line) return readingRow(line, struck, null);
  if ('word' in line) return { kind: 'word', key: line.id, line, struck };
  return { kind: 'mark', key: line.id, line, struck };
};

const readingRow = (reading: Reading, struck: Struck, gapDays: number | null): Row => ({
  ...{ kind: 'reading', key: reading.id, line: reading, struck, gapDays },
});

const noteRow = (note: ExtraLines['notes'][number], struck: Struck): Row => ({
  ...{ kind: 'note', key: note.id, line: note, struck },
});

type WithoutPlace<Each> = Each extends LogRow ? Omit<Each, 'day' | 'planned' | 'opensDay'> : never;
type Row = WithoutPlace<LogRow>;

const noExtraLines: ExtraLines = { notes: [], movedAway: [] };
