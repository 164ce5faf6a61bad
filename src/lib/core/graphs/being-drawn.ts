import type { DrawingRecord, Notebook } from '#core/journal';
import { decodeTableChoice } from './decode-table-choice';
import type { TableChoice } from './table-choice';

/**
 * Whether nothing was drawn any more after the child said it was done.
 * @example
 * isDrawingFinished({ finishedAt: null, versions: [] }) // => false
 * isDrawingFinished({ finishedAt: '10', versions: [{ at: '09', paper: {} }] }) // => true
 * isDrawingFinished({ finishedAt: '10', versions: [{ at: '11', paper: {} }] }) // => false
 */
export const isDrawingFinished = ({
  finishedAt,
  versions,
}: Pick<DrawingRecord, 'finishedAt' | 'versions'>): boolean =>
  finishedAt !== null && versions.every(({ at }) => at < finishedAt);

/**
 * Whether a child's drawing of the same log is still open: then nothing may show how the graph
 * comes out. Another graph of the log, or other days of it, would show it as well. What a later
 * program drew of the investigation may be of any of its logs.
 * @example
 * isBeingDrawn({ drawings: new Map() }, { investigation: 'bean', specimens: ['one'] }) // => false
 * isBeingDrawn({ drawings: new Map([['a', { investigation: 'bean', choice: {}, finishedAt: null, versions: [] }]]) }, { investigation: 'bean', specimens: ['one'] }) // => true
 */
export const isBeingDrawn = (
  { drawings }: Pick<Notebook, 'drawings'>,
  choice: Pick<TableChoice, 'investigation' | 'specimens'>,
): boolean =>
  [...drawings.values()].some(
    (record) => !isDrawingFinished(record) && isOfSameLog(record, choice),
  );

const isOfSameLog = (
  record: DrawingRecord,
  { investigation, specimens }: Pick<TableChoice, 'investigation' | 'specimens'>,
): boolean => {
  if (record.investigation !== investigation) return false;
  const drawn = decodeTableChoice(record.choice);
  return !drawn.ok || drawn.value.specimens.some((specimen) => specimens.includes(specimen));
};
