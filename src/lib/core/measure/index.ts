export { isMarkId, markById, marks, type Mark, type MarkId } from './mark';
export type { Measured } from './measured';
export {
  exactPerUnit,
  isLengthUnit,
  nanometresByUnit,
  type LengthUnit,
  type Unit,
} from './unit';
