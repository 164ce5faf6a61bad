import type { LookAt } from '#core/graphs';

/** Whether a mark or a word of the paper is among what a hint points at. */
export const isLookedAt = (lookAt: LookAt | null, part: LookAt['part'], index: number): boolean =>
  lookAt?.part === part && 'indexes' in lookAt && lookAt.indexes.includes(index);
