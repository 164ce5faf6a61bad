import { failed, ok, type Result } from '#core/base';
import { markById, type MarkId } from '#core/measure';
import type { Change } from './change';
import { coarserMark } from './growth-point';

/**
 * A change dealt out over its days like cubes: every day gets `wholeMarks`, and `leftOverMarks`
 * stay on the table, fewer than there are days. "4 cm in 3 days: about 1 each day, and 1 left."
 */
export interface FairShare {
  readonly direction: 'more' | 'less' | 'same';
  /** What one cube stands for. */
  readonly mark: MarkId;
  readonly wholeMarks: number;
  readonly leftOverMarks: number;
  readonly days: number;
}

/**
 * Shares a change among the days in it, in whole marks. The mark is the coarser of the two the
 * readings were read to, or the finer when the change lies only on that; another can be asked for.
 * A change downward is shared the same way and says `less`.
 * Errors: `units-mixed` (a child cannot lay cubes for centimetres less inches); `between-marks`
 * (the change is not a whole number of any of the marks that were tried).
 * @example
 * fairShare({ from: { day: '2026-03-06', exact: 20000000, unit: 'cm', mark: '1 cm' }, to: { day: '2026-03-09', exact: 60000000, unit: 'cm', mark: '1 cm' }, gapDays: 3, exact: 40000000, perDay: { exact: 40000000, days: 3 }, unitsMixed: false, longEnough: true }) // => { ok: true, value: { direction: 'more', mark: '1 cm', wholeMarks: 1, leftOverMarks: 1, days: 3 } }
 */
export const fairShare = (change: Change, asked?: MarkId): Result<FairShare, FairShareError> => {
  if (change.unitsMixed) return failed({ kind: 'units-mixed' });
  const { mark: first } = change.from;
  const { mark: second } = change.to;
  const coarser = coarserMark(first, second);
  const tried = asked ? [asked] : [coarser, coarser === first ? second : first];
  const mark = tried.find((each) => change.exact % markById(each).exact === 0);
  if (!mark) return failed({ kind: 'between-marks', tried });
  const marks = Math.abs(change.exact) / markById(mark).exact;
  return ok({
    direction: change.exact > 0 ? 'more' : change.exact < 0 ? 'less' : 'same',
    mark,
    wholeMarks: Math.floor(marks / change.gapDays),
    leftOverMarks: marks % change.gapDays,
    days: change.gapDays,
  });
};

export type FairShareError =
  | { readonly kind: 'units-mixed' }
  | { readonly kind: 'between-marks'; readonly tried: readonly MarkId[] };
