import type { FoundMistake, Look, LookAt, MistakeId, RightPart } from './found-mistake';

/** Something to say about a drawing, and whether it is only that a part is not drawn yet. */
export interface DrawnRemark {
  readonly mistake: FoundMistake;
  readonly isYetToDraw: boolean;
}

type Indexed = Extract<LookAt, { readonly indexes: readonly number[] }>['part'];
type Plain = Exclude<LookAt['part'], Indexed>;

/** Not part of the public door. */
export const remarkOn = (
  id: MistakeId,
  part: Indexed,
  indexes: readonly number[],
  isSoft = false,
): DrawnRemark => ({
  mistake: { id, lookAt: { part, indexes: indexes.toSorted((one, other) => one - other) }, isSoft },
  isYetToDraw: false,
});

/** Not part of the public door. */
export const remarkOnWhole = (id: MistakeId, part: Plain): DrawnRemark => ({
  mistake: { id, lookAt: { part }, isSoft: false },
  isYetToDraw: false,
});

/** The same remark about a part that is still to be drawn. Not part of the public door. */
export const yetToDraw = (remark: DrawnRemark): DrawnRemark => ({ ...remark, isYetToDraw: true });

/**
 * What is said in the end: what is drawn before what is still to be drawn, and each mistake once,
 * at its first place. Not part of the public door.
 */
export const lookOf = (right: readonly RightPart[], remarks: readonly DrawnRemark[]): Look => {
  const inOrder = [
    ...remarks.filter(({ isYetToDraw }) => !isYetToDraw),
    ...remarks.filter(({ isYetToDraw }) => isYetToDraw),
  ].map(({ mistake }) => mistake);
  return {
    right,
    mistakes: inOrder.filter(
      ({ id }, index) => inOrder.findIndex((other) => other.id === id) === index,
    ),
  };
};
