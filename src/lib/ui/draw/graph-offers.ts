import type { GraphKind, GraphReadiness, TableOffer, TableVariant } from '#core/graphs';

/** One graph that can be drawn of one table: a card to choose. */
export interface GraphOffer {
  readonly id: string;
  readonly graph: GraphKind;
  readonly offer: TableOffer;
  readonly readiness: GraphReadiness;
  /** The best way to get the table for this graph, and the other ways that are ready. */
  readonly variant: TableVariant;
  readonly others: readonly TableVariant[];
}

/** The cards of all tables: what suits now first, then what needs help, then what is not ready. */
export function graphOffers(offers: readonly TableOffer[]): readonly GraphOffer[] {
  const cards = offers.flatMap((offer) =>
    offer.variants[0].graphs.map(({ graph }) => cardOf(offer, graph)),
  );
  const rank = ({ readiness }: GraphOffer): number =>
    readiness.missing.length > 0 ? 3 : ['now', 'guided', 'later'].indexOf(readiness.fit);
  return cards.toSorted((one, other) => rank(one) - rank(other));
}

export const isReady = ({ readiness }: GraphOffer): boolean => readiness.missing.length === 0;

const cardOf = (offer: TableOffer, graph: GraphKind): GraphOffer => {
  const ready = offer.variants.filter(
    (variant) => readinessIn(variant, graph)?.missing.length === 0,
  );
  const variant = ready[0] ?? offer.variants[0];
  return {
    ...{ id: `${offer.source} ${graph}`, graph, offer, variant },
    readiness: readinessIn(variant, graph) as GraphReadiness,
    others: ready.slice(1),
  };
};

const readinessIn = (variant: TableVariant, graph: GraphKind): GraphReadiness | undefined =>
  variant.graphs.find((each) => each.graph === graph);
