import { civilDayAt, formatDay, type CivilDay } from '#core/calendar';
import { momentOfStamp, type LessonRecord, type Notebook } from '#core/journal';
import { decodeLessonChanges, purposeIds } from '#core/lessons';
import { purposeText } from '#ui/lesson-words';
import { isGraphKind } from '#ui/graph-words';
import type { GraphKind } from '#core/graphs';

/** A lesson made before, as its line in the list shows it. */
export interface MadeLesson {
  readonly record: LessonRecord;
  readonly title: string;
  readonly graph: GraphKind | null;
  /** What was measured, as the family calls it; null where the log is not in the notebook now. */
  readonly log: string | null;
  readonly madeOn: CivilDay;
  readonly givenOn: readonly string[];
}

/** The lessons of a notebook, the newest first: told without working out their questions. */
export const madeLessons = (
  { lessons, investigations, specimens }: Notebook,
  timeZone: string,
): readonly MadeLesson[] =>
  [...lessons.values()].toReversed().map((record) => {
    const changes = decodeLessonChanges(record.changes);
    const kept = changes.ok ? changes.value : null;
    const log = investigations.get(record.investigation);
    const specimen = record.specimen && specimens.get(record.specimen);
    return {
      record,
      title: kept?.title || titleOf(record),
      graph: isGraphKind(record.graph) ? record.graph : null,
      log:
        log && (record.specimen === undefined || specimen) ? (specimen?.name ?? log.title) : null,
      madeOn: kept?.madeOn ?? civilDayAt(momentOfStamp(record.madeAt), timeZone),
      givenOn: [...new Set(record.givenOn)].map((day) => formatDay(day, 'short')),
    };
  });

const titleOf = ({ purpose }: LessonRecord): string => {
  const known = purposeIds.find((id) => id === purpose);
  return known ? purposeText(known) : 'A lesson of a newer Morning Measure';
};
