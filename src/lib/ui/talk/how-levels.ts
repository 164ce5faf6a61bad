import type { EvidenceLevel } from '#core/journal';

/** How an answer went, the freest first. */
export const evidenceLevels = [
  'alone',
  'with-help',
  'seen',
] as const satisfies readonly EvidenceLevel[];
