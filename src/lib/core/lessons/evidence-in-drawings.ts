import { civilDayAt, type CivilDay } from '#core/calendar';
import { graphKinds, isDrawingFinished, keptTally } from '#core/graphs';
import { momentOfStamp, type DrawingRecord, type Notebook, type Stamp } from '#core/journal';
import type { Finding } from './evidence-in-answers';
import { skills } from './skill';

/**
 * What finished drawings show: that kind of graph drawn, and days sorted by hand where they were.
 * How much help was given is not kept with a drawing, so it is only "seen": a grown-up's note can
 * say more. A drawing that was taken up again is evidence when it is done again.
 * Not part of the public door.
 */
export const evidenceInDrawings = (
  { drawings, investigations }: Notebook,
  timeZone: string,
): readonly Finding[] =>
  [...drawings.values()]
    .filter((record) => isDrawingFinished(record) && investigations.has(record.investigation))
    .flatMap((record) => inDrawing(record, timeZone));

const inDrawing = (record: DrawingRecord, timeZone: string): readonly Finding[] => {
  const { id, author, graph, versions } = record;
  const at = record.finishedAt!;
  const kind = graphKinds.find((each) => each === graph);
  const day = dayOfStamp(at, timeZone);
  if (!kind || !day) {
    return [{ unread: { id, why: kind ? 'not-a-day' : 'not-a-graph' }, author }];
  }
  const drawn = skills.filter(({ graphs }) => graphs.includes(kind)).map((skill) => skill.id);
  const tally = keptTally(versions);
  const found = { id, author, day, at, how: 'seen' } as const;
  return [
    { found: { ...found, of: { kind: 'drawing', drawing: id, graph: kind }, skills: drawn } },
    ...(tally.ok && tally.value
      ? [{ found: { ...found, of: { kind: 'tally', drawing: id }, skills: tallySkills } } as const]
      : []),
  ];
};

const tallySkills = skills.filter(({ deeds }) => deeds.includes('tally')).map(({ id }) => id);

/** The day of a moment where the family is; null outside the years of the calendar. Not part of the public door. */
export const dayOfStamp = (stamp: Stamp, timeZone: string): CivilDay | null =>
  stamp.slice(0, 4) < '2199' ? civilDayAt(momentOfStamp(stamp), timeZone) : null;
