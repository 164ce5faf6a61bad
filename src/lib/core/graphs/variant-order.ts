import type { TableSource } from './table-choice';
import type { TableSpan, TableVariant } from './table-offer';

/**
 * The variants of a table in the order they are offered, the best first: ready before not, as read
 * before told otherwise, one log before several, the whole span before a part of it. Where any is
 * ready, those that are not are left out, except the whole log as it was read: a grown-up may ask
 * why not that one. Where none is, the one is told that wants nothing but more readings, if any
 * does: only where there is no way out is the reason told that there is none. Not part of the
 * public door.
 */
export const inOfferOrder = (variants: readonly TableVariant[]): readonly TableVariant[] => {
  const inOrder = variants.toSorted((one, other) => rankOf(one) - rankOf(other));
  const [best] = inOrder;
  if (!best || !isReady(best)) return inOrder.slice(0, 1);
  const asItIs = inOrder.filter(
    (each) => !isReady(each) && !each.together && isAsRead(each) && isWhole(each),
  );
  return [...inOrder.filter(isReady), ...asItIs.slice(0, 1)];
};

/** Whether a child of the stage may draw at least one graph of it today. Not in the public door. */
export const isReady = ({ graphs }: TableVariant): boolean =>
  graphs.some(({ missing, fit }) => missing.length === 0 && fit !== 'later');

const hasNoGraph = ({ graphs }: TableVariant): boolean =>
  graphs.every(({ missing }) => missing.some(({ kind }) => kind === 'no-graph'));

const isWhole = ({ span }: TableVariant): boolean => span === 'whole' || span === 'one-day';

const isAsRead = ({ told, choice }: TableVariant): boolean =>
  (told === null || told === 'as-read') && !choice.givenSteps;

const rankOf = (variant: TableVariant): number =>
  (isReady(variant) ? 0 : 1000) +
  (hasNoGraph(variant) ? 500 : 0) +
  (isAsRead(variant) ? 0 : 100) +
  (variant.together ? 50 : 0) +
  variant.choice.specimens.length * (ofOneOrSeveral.has(variant.choice.source) ? 10 : 0) +
  spanOrder.indexOf(variant.span);

const spanOrder: readonly TableSpan[] = [
  'one-day',
  'whole',
  'latest-ten',
  'first-ten',
  'first-that-fit',
  'latest-shared',
  'shared-that-fit',
];
const ofOneOrSeveral: ReadonlySet<TableSource> = new Set(['growth-amounts', 'days-in-order']);
