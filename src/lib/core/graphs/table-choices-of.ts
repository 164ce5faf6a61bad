import type { CivilDay } from '#core/calendar';
import type {
  Investigation,
  InvestigationId,
  Notebook,
  Quantity,
  SpecimenId,
  Stage,
} from '#core/journal';
import { seriesOf, type Series } from '#core/series';
import { formBySource } from './form-by-source';
import type { GraphTable } from './graph-table';
import { notRightFor } from './not-right-for';
import type { TableSource } from './table-choice';
import type { TableOffer, TableQuestion, TableVariant } from './table-offer';
import { tableVariants } from './table-variants';
import { isReady } from './variant-order';

/**
 * What can be drawn of an investigation today: every way its logs make a table, with the graphs
 * each may become and what is still missing. Those that are ready come first. Ways that have
 * nothing to show for this family (one specimen, no weather noted) are left out; the main ones of
 * the quantity stay, so that a page can say how many days more are needed. None for an
 * investigation the notebook does not have.
 *
 * @param about the investigation, and whose log it is about where only one can be shown: by
 *   itself, the specimen with most readings
 * @param today the day it is where the family is
 * @example
 * tableChoicesOf(foldEntries([]), { investigation: 'no-such-one' }, 'grade-2', '2026-03-10') // => []
 */
export const tableChoicesOf = (
  notebook: Notebook,
  about: { readonly investigation: InvestigationId; readonly specimen?: SpecimenId },
  stage: Stage,
  today: CivilDay,
): readonly TableOffer[] => {
  const investigation = notebook.investigations.get(about.investigation);
  const logs = [...notebook.specimens.values()]
    .filter((specimen) => specimen.investigation === about.investigation)
    .flatMap((specimen) => seriesOf(notebook, specimen.id, today) ?? []);
  const main = logs.find((log) => log.specimen.id === about.specimen) ?? fullestOf(logs);
  if (!investigation || !main) return [];
  const offers = sourcesByQuantity[investigation.quantity].flatMap((source) =>
    offerOf(source, { notebook, investigation, logs, main, stage, today }),
  );
  const ready = offers.filter(({ variants }) => isReady(variants[0]));
  return [...ready, ...offers.filter((offer) => !ready.includes(offer))];
};

/** What an offer is made of. */
export interface OfferMaterial {
  readonly notebook: Notebook;
  readonly investigation: Investigation;
  readonly logs: readonly Series[];
  readonly main: Series;
  readonly stage: Stage;
  readonly today: CivilDay;
}

const offerOf = (source: TableSource, material: OfferMaterial): readonly TableOffer[] => {
  const form = formBySource[source];
  const [best, ...others] = tableVariants(source, logsFor(source, material), material);
  if (!best || best.have < (fewestBySource[source] ?? 0) || hasOneKind(source, best)) return [];
  return [
    {
      ...{ source, form, question: questionByForm[form], variants: [best, ...others] },
      notRight: notRightFor(form, material.investigation.quantity),
    },
  ];
};

/** Every day measured, or one specimen: there is nothing to sort. */
const hasOneKind = (source: TableSource, { graphs }: TableVariant): boolean =>
  (source === 'state-days' || source === 'specimen-readings') &&
  graphs.some(({ missing }) =>
    missing.some((each) => each.kind === 'no-graph' && each.why.kind === 'too-few'),
  );

/** Which logs a table may be of: one, all, or one and then several in one graph. */
const logsFor = (
  source: TableSource,
  { logs, main }: OfferMaterial,
): readonly (readonly Series[])[] => {
  if (ofAll.has(source)) return [logs];
  if (source === 'values-side-by-side') {
    const other = fullestOf(logs.filter((log) => log !== main));
    return other ? [[main, other]] : [];
  }
  if (!ofSeveral.has(source) || logs.length < 2) return [[main]];
  return [[main], [main, ...logs.filter((log) => log !== main)].slice(0, mostTogether)];
};

const fullestOf = (logs: readonly Series[]): Series | undefined =>
  logs.toSorted((one, other) => contentOf(other) - contentOf(one))[0];

const contentOf = ({ days }: Series): number =>
  days.reduce((sum, { readings, words }) => sum + readings.length + words.length, 0);

/** As many as have a mark and a line of their own. */
const mostTogether = 3;
const ofAll: ReadonlySet<TableSource> = new Set([
  'weather-days',
  'specimen-readings',
  'each-specimen',
]);
const ofSeveral: ReadonlySet<TableSource> = new Set(['growth-amounts', 'days-in-order']);

/** Left out below this: there is nothing in them to look forward to. */
const fewestBySource: Readonly<Partial<Record<TableSource, number>>> = {
  'weather-days': 1,
  'state-days': 1,
  'specimen-readings': 1,
  'each-specimen': 2,
  'values-side-by-side': 2,
  'reads-of-one': 2,
};

const questionByForm: Readonly<Record<GraphTable['form'], TableQuestion>> = {
  counts: 'which-came-most',
  values: 'which-had-most',
  measures: 'how-often',
  times: 'how-did-it-change',
};

/** The main one first. */
const sourcesByQuantity: Readonly<Record<Quantity, readonly TableSource[]>> = {
  'plant-height': [
    ...(['day-values', 'growth-days', 'growth-amounts', 'weather-days'] as const),
    ...(['days-in-order', 'values-side-by-side', 'each-specimen', 'reads-of-one'] as const),
    ...(['state-days', 'specimen-readings'] as const),
  ],
  rain: ['day-values', 'wet-days', 'rain-amounts', 'week-values', 'weather-days', 'state-days'],
  shadow: ['hour-values', 'hours-in-order', 'weather-days'],
  length: ['each-specimen', 'reads-of-one', 'day-values', 'days-in-order', 'specimen-readings'],
  'daily-kind': ['kind-days'],
};
