import type { StemStand } from '#core/journal';

/** How a stem stands: our own small drawings, as pencil strokes on a 24 by 24 square. */
export const stemPaths: Readonly<Record<StemStand, string>> = {
  'by-itself':
    'M3 20.5h18M12 20.5V5M12 11c-3 0-4.6-1.5-5-4.4 3 .2 4.6 1.7 5 4.4M12 8c.4-2.7 2-4.2 5-4.4-.4 2.9-2 4.4-5 4.4',
  leans:
    'M3 20.5h18M8 20.5c0-6 2.5-11 9-15M10.3 13c-2.8-.7-4.2-2.5-4.1-5.3 2.7.8 4.2 2.6 4.1 5.3M13.5 9c1.5-2.3 3.6-3 6.2-2.2-1.7 2.2-3.6 2.9-6.2 2.2',
  'lies-down':
    'M3 20.5h18M4.5 20.5c1.5-3.5 6-4.2 16-3.3M11.5 17c-1.7-2.2-1.5-4.3.6-6.2 1.3 2.3 1.1 4.3-.6 6.2M16 17c.3-2.5 1.7-3.9 4.2-4.2-.2 2.6-1.7 4-4.2 4.2',
};
