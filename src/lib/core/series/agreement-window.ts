import { exactPerUnit, markById, type MarkId } from '#core/measure';

/**
 * How far the two sides of one ruler may lie apart and still agree, each read to its own mark with
 * the small noise of reading: 2 cm for whole inches, 1.5 cm for halves, 1.2 cm for quarters and
 * finer. For a coarser mark (feet), and for a metric side coarser than a centimetre, the window
 * grows by as much as half a step does. Windows: simulated (tests/core/series/rulers.test.ts).
 *
 * @returns whole nanometres
 * @example
 * agreementWindow('1/2 in') // => 15000000
 * agreementWindow('1/2 in', '0.1 m') // => 60000000
 */
export function agreementWindow(customary: MarkId, metric: MarkId = '1 cm'): number {
  const millimetre = exactPerUnit('mm');
  const coarserMetric = Math.max(0, markById(metric).exact - exactPerUnit('cm')) / 2;
  return windowOf(markById(customary).exact) * millimetre + coarserMetric;
}

const windowOf = (markExact: number): number => {
  const inch = exactPerUnit('in');
  if (markExact > inch) return 20 + (markExact - inch) / 2 / exactPerUnit('mm');
  if (markExact === inch) return 20;
  return markExact > inch / 4 ? 15 : 12;
};
