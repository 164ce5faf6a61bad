import { markById, type MarkId } from './mark';
import { isLengthUnit, systemOf, type LengthUnit } from './unit';

/**
 * The mark a reading deserves when it is shown in a unit of the other system: one whose rounding
 * is consistent with the reading's own, never one that claims more (NIST SP 811 (2008) B.7).
 *
 * Into metric: decimal marks are ten apart, so the finest that is not finer than a tenth of the
 * reading's step. Sixteenths, eighths and quarters of an inch (1.6 to 6.4 mm) come out to the
 * millimetre, halves and wholes (12.7, 25.4 mm) to the centimetre, feet to the tenth of a metre,
 * as 36 ft = 11.0 m in B.7.2. The half centimetre is passed over: it is read, not computed to.
 *
 * Into inches: fraction marks are two apart, so the finest that is not finer than the reading's
 * own step: centimetres to the half inch, half centimetres to the quarter, millimetres to the
 * sixteenth; a rain gauge's 0.1 mm to 0.01 in. Between the foot and the inch, where the next
 * coarser mark would be more than twice the step, the next finer one stands in.
 *
 * Within one system nothing is lost and the reading keeps its own mark.
 * @example
 * deservedMark('1/4 in', 'cm') // => '1 mm'
 * deservedMark('1/2 in', 'cm') // => '1 cm'
 * deservedMark('1 cm', 'in') // => '1/2 in'
 */
export const deservedMark = (readTo: MarkId, unit: LengthUnit): MarkId => {
  const mark = markById(readTo);
  if (!isLengthUnit(mark.unit)) throw new Error('A count has no length');
  if (systemOf(mark.unit) === systemOf(unit)) return readTo;
  return systemOf(unit) === 'metric' ? metricMark(mark.exact) : customaryMark(mark.exact);
};

const metricLadder = ['0.1 mm', '1 mm', '1 cm', '0.1 m', '1 m'] as const;

const metricMark = (step: number): MarkId =>
  metricLadder.find((id) => markById(id).exact * 10 >= step) ?? '1 m';

const customaryLadder = [
  '0.01 in',
  '1/16 in',
  '1/8 in',
  '1/4 in',
  '1/2 in',
  '1 in',
  '1 ft',
  '1 yd',
] as const;

const customaryMark = (step: number): MarkId => {
  const place = customaryLadder.findIndex((id) => markById(id).exact >= step);
  const coarser = customaryLadder[place];
  const finer = place < 0 ? '1 yd' : customaryLadder[place - 1];
  if (coarser && (markById(coarser).exact <= step * 2 || !finer)) return coarser;
  return finer ?? '1 yd';
};
