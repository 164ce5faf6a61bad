import type { CivilDay } from '#core/calendar';
import { tableChoicesOf, type Missing, type StandardCode, type TableChoice } from '#core/graphs';
import type { InvestigationId, Notebook, SpecimenId, Stage } from '#core/journal';
import { lessonPurposes, type LessonPurpose } from './lesson-purpose';

/** A purpose, with the table it can be taught with and what is still missing for it. */
export interface PurposeOffer {
  readonly purpose: LessonPurpose;
  readonly choice: TableChoice;
  readonly standards: readonly StandardCode[];
  /** Ready today when nothing is. */
  readonly missing: readonly Missing[];
}

/**
 * Which lessons the logs of an investigation can be taught with today, those that are ready first,
 * and what the others still lack. The best table of each is chosen: one that is ready, as read,
 * the whole log. Line plots and bars that belong to a later grade are left out.
 *
 * @param today the day it is where the family is
 * @example
 * purposesReady(foldEntries([]), { investigation: 'no-such-one' }, 'grade-2', '2026-03-10') // => []
 */
export const purposesReady = (
  notebook: Notebook,
  about: { readonly investigation: InvestigationId; readonly specimen?: SpecimenId },
  stage: Stage,
  today: CivilDay,
): readonly PurposeOffer[] => {
  const offers = tableChoicesOf(notebook, about, stage, today);
  const found = lessonPurposes
    .filter(({ stages }) => stages.includes(stage))
    .flatMap((purpose) => {
      const possible = offers
        .filter(({ source }) => purpose.sources.includes(source))
        .flatMap(({ variants }) => variants)
        .flatMap(({ choice, graphs, tableReady }) =>
          graphs
            .filter(({ graph, fit }) => graph === purpose.graph && fit !== 'later')
            .map(({ standards, missing }): PurposeOffer & { readonly isReady: boolean } => ({
              ...{ purpose, choice, missing },
              standards: [...new Set([...standards, ...purpose.alsoServes])],
              isReady: missing.length === 0 && tableReady,
            })),
        );
      const best = possible.find(({ isReady }) => isReady) ?? possible[0];
      return best ? [best] : [];
    });
  const inOrder = [
    ...found.filter((each) => each.isReady),
    ...found.filter((each) => !each.isReady),
  ];
  return inOrder.map(({ purpose, choice, standards, missing }) => ({
    ...{ purpose, choice, standards, missing },
  }));
};
