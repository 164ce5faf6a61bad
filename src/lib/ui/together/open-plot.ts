import type { CivilDay } from '#core/calendar';
import { decodeTableChoice } from '#core/graphs';
import type { DrawingRecord, Notebook, SpecimenId } from '#core/journal';

/**
 * A line plot with this day of this specimen on it that a child has begun and not finished: while
 * there is one, the notebook shows no plot of its own. Null where there is none.
 */
export const openPlotOf = (
  { drawings }: Pick<Notebook, 'drawings'>,
  specimen: SpecimenId,
  day: CivilDay,
): DrawingRecord | null =>
  [...drawings.values()].findLast(
    (record) => record.graph === 'line-plot' && isOpen(record) && isOf(record, specimen, day),
  ) ?? null;

/** Open until the child says it is done, and again when it is drawn on after that. */
const isOpen = ({ finishedAt, versions }: DrawingRecord): boolean =>
  finishedAt === null || versions.some(({ at }) => at >= finishedAt);

const isOf = (record: DrawingRecord, specimen: SpecimenId, day: CivilDay): boolean => {
  const read = decodeTableChoice(record.choice);
  // What a later program drew of this specimen may be of any of its days.
  if (!read.ok) return record.specimen === specimen;
  const { specimens, from, to } = read.value;
  return specimens.includes(specimen) && from <= day && day <= to;
};
