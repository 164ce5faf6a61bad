import type { DrawingRecord } from '#core/journal';

/** Whether nothing was drawn any more after the child said it was done. */
export const isDrawingFinished = ({ finishedAt, versions }: DrawingRecord): boolean =>
  finishedAt !== null && versions.every(({ at }) => at < finishedAt);
