import type { Series } from '#core/series';
import { givenFrameVariants, spanVariants, type VariantMaterial } from './span-variants';
import { spanChoices, type SpanChoice } from './span-choices';
import type { TableSource } from './table-choice';
import type { TableVariant } from './table-offer';
import { inOfferOrder, isReady } from './variant-order';

/**
 * The variants of a table, in the order they are offered. Where none is ready because bars would
 * be taller than the paper, and there is no shorter record and no other unit either, a frame that
 * a grown-up gives is offered. Not part of the public door.
 */
export const tableVariants = (
  source: TableSource,
  logSets: readonly (readonly Series[])[],
  material: VariantMaterial,
): readonly TableVariant[] => {
  const places = logSets.flatMap((logs) =>
    spansOf(source, logs, material).map((span) => ({ source, logs, span, material })),
  );
  const variants = places.flatMap(spanVariants);
  const given = variants.some(isReady) ? [] : places.flatMap(givenFrameVariants);
  return inOfferOrder([...variants, ...given]);
};

/** An empty log has a table of nothing, of the day it was begun. */
const spansOf = (
  source: TableSource,
  logs: readonly Series[],
  { today }: VariantMaterial,
): readonly SpanChoice[] => {
  const spans = spanChoices(source, logs);
  if (spans.length > 0) return spans;
  const day = logs[0]?.specimen.startedOn ?? today;
  return [{ span: 'whole', from: day, to: day }];
};
