import { decodeTableChoice, type TableChoice } from '#core/graphs';
import type { DrawingRecord, Notebook } from '#core/journal';

/**
 * Whether a child's drawing of the same log is still open: then nothing may show how the graph
 * comes out. Another graph of the log, or other days of it, would show it as well.
 */
export const isBeingDrawn = (
  { drawings }: Pick<Notebook, 'drawings'>,
  choice: Pick<TableChoice, 'investigation' | 'specimens'>,
): boolean =>
  [...drawings.values()].some((record) => isOpen(record) && isOfSameLog(record, choice));

/** A drawing is open until the child says it is done, and again when it is drawn on after that. */
const isOpen = ({ finishedAt, versions }: DrawingRecord): boolean =>
  finishedAt === null || versions.some(({ at }) => at >= finishedAt);

const isOfSameLog = (
  record: DrawingRecord,
  { investigation, specimens }: Pick<TableChoice, 'investigation' | 'specimens'>,
): boolean => {
  if (record.investigation !== investigation) return false;
  const drawn = decodeTableChoice(record.choice);
  // What a later program drew of this investigation may be of any of its logs.
  return !drawn.ok || drawn.value.specimens.some((specimen) => specimens.includes(specimen));
};
