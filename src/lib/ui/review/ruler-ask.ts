import { exactPerUnit, markById } from '#core/measure';
import type { RulerTask } from '#core/lessons';
import { reviewWords } from './review-words';

/** What a ruler task asks, in the child's words. */
export const rulerAsk = ({ kind, mark, unit }: RulerTask): string => {
  if (kind === 'off-zero') return reviewWords.ruler['off-zero'];
  const isWhole = markById(mark).exact === exactPerUnit(unit);
  return isWhole ? reviewWords.ruler.nearest : reviewWords.ruler.part;
};
