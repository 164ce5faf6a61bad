import type { Drawing } from '#core/graphs';

/** How many different owners the marks of a drawing have, or its key names. */
export const seriesCount = ({ points, crosses, seriesKey }: Drawing): number =>
  Math.max(
    seriesKey.length,
    new Set(points.map(({ series }) => series)).size,
    new Set(crosses.map(({ look }) => look)).size,
  );
