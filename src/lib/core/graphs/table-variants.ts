import type { CivilDay } from '#core/calendar';
import type { Investigation, Notebook, Stage } from '#core/journal';
import type { Series } from '#core/series';
import { cutToDays } from './cut-to-days';
import type { GraphTable } from './graph-table';
import { fewestForTable, numbersIn, readinessOf } from './readiness-of';
import { mostKindsByStage } from './right-graph-of';
import { spanChoices, type SpanChoice } from './span-choices';
import type { TableChoice, TableSource } from './table-choice';
import { tableFrom } from './table-of';
import type { TableSpan, TableVariant, ToldHow } from './table-offer';
import { thingsCounted } from './tally-tables';
import { losesAny, toldAsRead, toldOtherwise, type ToldWay } from './told-choices';
import { subjectOf } from './standards-of';

interface Material {
  readonly notebook: Notebook;
  readonly investigation: Investigation;
  readonly stage: Stage;
  readonly today: CivilDay;
}

/**
 * The variants of a table, the best first: ready before not, as read before told otherwise, one
 * log before several, the whole span before a part of it. Where any is ready, those that are not
 * are left out, except the whole log as it was read: a grown-up may ask why not that one. Not part
 * of the public door.
 */
export const variantsOf = (
  source: TableSource,
  logSets: readonly (readonly Series[])[],
  material: Material,
): { readonly form: GraphTable['form']; readonly variants: readonly TableVariant[] } => {
  const form = formBySource[source];
  const all = logSets.flatMap((logs) =>
    spansOf(source, logs, material).flatMap((span) => variantsOfSpan(source, logs, span, material)),
  );
  const inOrder = all.toSorted((one, other) => rankOf(one) - rankOf(other));
  const [best] = inOrder;
  if (!best || !isReady(best)) return { form, variants: inOrder.slice(0, 1) };
  const asItIs = inOrder.filter(
    (each) => !isReady(each) && !each.together && isAsRead(each) && isWhole(each),
  );
  return { form, variants: [...inOrder.filter(isReady), ...asItIs.slice(0, 1)] };
};

/** Whether a child of the stage may draw at least one graph of it today. Not in the public door. */
export const isReady = ({ graphs }: TableVariant): boolean =>
  graphs.some(({ missing, fit }) => missing.length === 0 && fit !== 'later');

/** An empty log has a table of nothing, of the day it was begun. */
const spansOf = (
  source: TableSource,
  logs: readonly Series[],
  { today }: Material,
): readonly SpanChoice[] => {
  const spans = spanChoices(source, logs);
  if (spans.length > 0) return spans;
  const day = logs[0]?.specimen.startedOn ?? today;
  return [{ span: 'whole', from: day, to: day }];
};

const variantsOfSpan = (
  source: TableSource,
  logs: readonly Series[],
  { span, from, to }: SpanChoice,
  material: Material,
): readonly TableVariant[] => {
  const { notebook, investigation, stage } = material;
  const choice: TableChoice = {
    ...{ source, investigation: investigation.id, from, to, told: null, mostKinds: null },
    specimens: logs.map(({ specimen }) => specimen.id),
  };
  const cut = logs.map((series) => cutToDays(series, choice));
  const variant = (made: TableChoice, told: ToldHow): readonly TableVariant[] => {
    const table = tableFrom(made, logs, notebook);
    return table ? [variantOf(made, table, { span, told, cut, stage, investigation })] : [];
  };
  if (formBySource[source] === 'counts') {
    const most = mostKindsByStage[stage];
    const [plain] = variant(choice, null);
    const isTooMany = plain?.graphs.some(({ missing }) =>
      missing.some((each) => each.kind === 'no-graph' && each.why.kind === 'too-many-kinds'),
    );
    return [
      ...(plain ? [plain] : []),
      ...(isTooMany ? variant({ ...choice, mostKinds: most }, null) : []),
    ];
  }
  const told = toldAsRead(cut);
  if (!told) return [];
  const asRead = variant({ ...choice, told }, 'as-read');
  const ways = toldOtherwise(cut, told, stage).filter((way) => !losesAny(cut, way.told));
  const made = (way: ToldWay) => variant({ ...choice, told: way.told }, way.how);
  const inOneUnit = ways.filter(({ how }) => how === 'one-unit').flatMap(made);
  if ([...asRead, ...inOneUnit].some(isReady) || asRead.some(needsMore)) {
    return [...asRead, ...inOneUnit];
  }
  // Another unit makes a table fit the paper; it is no cure for numbers that all differ.
  const isTooLarge = asRead.some(hasNoGraph);
  const otherwise = ways
    .filter(({ how }) => how === 'coarser-mark' || (how === 'other-unit' && isTooLarge))
    .flatMap(made)
    .find(isReady);
  return [...asRead, ...inOneUnit, ...(otherwise ? [otherwise] : [])];
};

interface Setting {
  readonly span: TableSpan;
  readonly told: ToldHow;
  readonly cut: readonly Series[];
  readonly stage: Stage;
  readonly investigation: Investigation;
}

const variantOf = (
  choice: TableChoice,
  table: GraphTable,
  { span, told, cut, stage, investigation }: Setting,
): TableVariant => {
  const have = table.form === 'counts' ? thingsCounted(choice.source, cut) : numbersIn(table);
  return {
    ...{ choice, span, told, have, together: choice.mostKinds !== null },
    aboutCount: textsOf(table).filter((text) => text.startsWith('about ')).length,
    tableReady: have >= fewestForTable,
    graphs: readinessOf(table, stage, subjectOf(choice.source, investigation), have),
  };
};

const textsOf = (table: GraphTable): readonly string[] => {
  if (table.form === 'counts') return [];
  return (table.form === 'measures' ? table.values : table.rows).map(({ text }) => text);
};

const hasNoGraph = ({ graphs }: TableVariant): boolean =>
  graphs.some(({ missing }) => missing.some(({ kind }) => kind === 'no-graph'));

/** Telling it otherwise makes no more readings. */
const needsMore = ({ graphs }: TableVariant): boolean =>
  graphs.some(({ missing }) => missing.some(({ kind }) => kind === 'more-needed'));

const isWhole = ({ span }: TableVariant): boolean => span === 'whole' || span === 'one-day';

const isAsRead = ({ told }: TableVariant): boolean => told === null || told === 'as-read';

const rankOf = (variant: TableVariant): number =>
  (isReady(variant) ? 0 : 1000) +
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
];
const ofOneOrSeveral: ReadonlySet<TableSource> = new Set(['growth-amounts', 'days-in-order']);

/** The form of the table each source makes. Not part of the public door. */
export const formBySource: Readonly<Record<TableSource, GraphTable['form']>> = {
  'kind-days': 'counts',
  'weather-days': 'counts',
  'wet-days': 'counts',
  'growth-days': 'counts',
  'state-days': 'counts',
  'specimen-readings': 'counts',
  'day-values': 'values',
  'week-values': 'values',
  'hour-values': 'values',
  'each-specimen': 'measures',
  'reads-of-one': 'measures',
  'growth-amounts': 'measures',
  'rain-amounts': 'measures',
  'days-in-order': 'times',
  'hours-in-order': 'times',
};
