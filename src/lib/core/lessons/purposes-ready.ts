import type { CivilDay } from '#core/calendar';
import { tableChoicesOf, type StandardCode, type TableChoice } from '#core/graphs';
import type { InvestigationId, Notebook, SpecimenId, Stage } from '#core/journal';
import { lessonPurposes, type LessonPurpose } from './lesson-purpose';
import { lacksOf, type LessonMissing } from './purpose-needs';

/** A table that a purpose can be taught with, and what is still missing for it. */
export interface PurposeTable {
  readonly choice: TableChoice;
  readonly standards: readonly StandardCode[];
  /** Ready today when nothing is. */
  readonly missing: readonly LessonMissing[];
}

/** A purpose with the best table for it. */
export interface PurposeOffer extends PurposeTable {
  readonly purpose: LessonPurpose;
  /** The best tables from elsewhere: the weather too, where it is about growing. */
  readonly otherTables: readonly PurposeTable[];
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
  const quantity = notebook.investigations.get(about.investigation)?.quantity;
  const found = lessonPurposes
    .filter(({ stages }) => stages.includes(stage))
    .filter(({ quantities }) => !quantities || (quantity && quantities.includes(quantity)))
    .flatMap((purpose) => {
      const possible = offers
        .filter(({ source }) => purpose.sources.includes(source))
        .flatMap(({ variants }) => variants)
        .flatMap(({ choice, graphs, tableReady }) =>
          graphs
            .filter(({ graph, fit }) => graph === purpose.graph && fit !== 'later')
            .map(({ standards, missing }): PossibleTable => ({
              ...{ choice, tableReady },
              missing: [...missing, ...lacksOf(purpose, choice, notebook, today)],
              standards: [...new Set([...standards, ...purpose.alsoServes])],
            })),
        );
      const inOrder = possible.toSorted((one, other) => farFrom(one) - farFrom(other));
      const bestBySource = inOrder.filter(
        ({ choice }, index) =>
          inOrder.findIndex((each) => each.choice.source === choice.source) === index,
      );
      const [best, ...others] = bestBySource;
      return best ? [{ purpose, best, others }] : [];
    });
  return found
    .toSorted((one, other) => Math.sign(farFrom(one.best)) - Math.sign(farFrom(other.best)))
    .map(({ purpose, best, others }) => ({
      ...{ purpose, ...tableOnly(best) },
      otherTables: others.map(tableOnly),
    }));
};

type PossibleTable = PurposeTable & { readonly tableReady: boolean };

const tableOnly = ({ choice, standards, missing }: PossibleTable): PurposeTable => ({
  ...{ choice, standards, missing },
});

/** 0 where it can be taught today. */
const farFrom = ({ missing, tableReady }: PossibleTable): number =>
  missing.length + (tableReady ? 0 : 1);
