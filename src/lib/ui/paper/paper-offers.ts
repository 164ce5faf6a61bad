import {
  graphKinds,
  tableChoicesOf,
  type GraphFit,
  type GraphKind,
  type TableChoice,
  type TableSource,
  type ToldHow,
} from '#core/graphs';
import type { CivilDay } from '#core/calendar';
import type { Notebook, Specimen, Stage } from '#core/journal';
import type { SheetKind } from './paper-words';

/** A table of a log that is ready to become a graph on paper. */
export interface PaperOffer {
  readonly graph: GraphKind;
  readonly source: TableSource;
  readonly choice: TableChoice;
  readonly told: ToldHow;
  readonly fit: GraphFit;
}

/** What a log can become on paper, in the order in which graphs are learnt. */
export interface GraphOffers {
  readonly graph: GraphKind;
  /** The best way to get each of its tables, and the other ways that are ready too. */
  readonly tables: readonly PaperOffer[];
  readonly otherWays: readonly PaperOffer[];
}

/** Every table of a log that is ready today, for each graph it may become; only what is ready. */
export function paperOffers(
  notebook: Notebook,
  specimen: Pick<Specimen, 'id' | 'investigation'>,
  stage: Stage,
  today: CivilDay,
): readonly GraphOffers[] {
  const about = { investigation: specimen.investigation, specimen: specimen.id };
  const choices = tableChoicesOf(notebook, about, stage, today);
  return graphKinds.flatMap((graph) => {
    const ways = choices.map(({ source, variants }) =>
      variants.flatMap(({ choice, told, graphs }): readonly PaperOffer[] =>
        graphs
          .filter((each) => each.graph === graph && each.missing.length === 0)
          .map(({ fit }) => ({ graph, source, choice, told, fit })),
      ),
    );
    const tables = ways.flatMap(([best]) => best ?? []);
    return tables.length === 0
      ? []
      : [{ graph, tables, otherWays: ways.flatMap((each) => each.slice(1)) }];
  });
}

/** The address of one sheet of a table. */
export const sheetAddress = (
  { graph, choice }: Pick<PaperOffer, 'graph' | 'choice'>,
  stage: Stage,
  sheet: SheetKind,
): string =>
  `/draw/paper?${new URLSearchParams({ graph, stage, choice: JSON.stringify(choice), sheet })}`;
