import type { CivilDay } from '#core/calendar';
import type { Investigation, Notebook, Stage } from '#core/journal';
import type { Series } from '#core/series';
import { mostKindsByStage } from './count-parts';
import { cutToDays } from './cut-to-days';
import { formBySource } from './form-by-source';
import type { GraphTable } from './graph-table';
import type { NoGraph } from './no-graph';
import { fewestForTable, numbersIn, readinessOf } from './readiness-of';
import type { SpanChoice } from './span-choices';
import { subjectOf } from './standards-of';
import type { TableChoice, TableSource } from './table-choice';
import { tableFrom } from './table-of';
import type { TableVariant, ToldHow } from './table-offer';
import { thingsCounted } from './tally-tables';
import { losesAny, toldAsRead, toldOtherwise, type ToldWay } from './told-choices';
import { isReady } from './variant-order';

/** What variants are made of. Not part of the public door. */
export interface VariantMaterial {
  readonly notebook: Notebook;
  readonly investigation: Investigation;
  readonly stage: Stage;
  readonly today: CivilDay;
}

/** Where a variant is made: of which logs and days of them. */
interface Place {
  readonly source: TableSource;
  readonly logs: readonly Series[];
  readonly span: SpanChoice;
  readonly material: VariantMaterial;
}

/**
 * The ways to get a table out of one span of days: counts with all their kinds or the smallest put
 * together; measures as they were read, in one unit, to a coarser mark or in another unit. Not part
 * of the public door.
 */
export const spanVariants = (place: Place): readonly TableVariant[] =>
  formBySource[place.source] === 'counts' ? variantsOfCounts(place) : variantsOfMeasures(place);

/**
 * The way out for bars that are taller than the paper unit by unit, however they are told: a frame
 * that a grown-up gives, with a scale by 5, 10 and on. None where that is not what is amiss. Not
 * part of the public door.
 */
export const givenFrameVariants = (place: Place): readonly TableVariant[] => {
  if (formBySource[place.source] !== 'values') return [];
  return variantsOfMeasures(place)
    .filter(
      (variant) =>
        (variant.told === 'as-read' || variant.told === 'one-unit') && saysNo(variant, 'too-tall'),
    )
    .flatMap(({ choice, told }) => variantOf({ ...choice, givenSteps: true }, told, place));
};

const variantsOfCounts = (place: Place): readonly TableVariant[] => {
  const choice = choiceOf(place);
  const [plain] = variantOf(choice, null, place);
  if (!plain) return [];
  const mostKinds = mostKindsByStage[place.material.stage];
  const isTooMany = saysNo(plain, 'too-many-kinds');
  return [plain, ...(isTooMany ? variantOf({ ...choice, mostKinds }, null, place) : [])];
};

const variantsOfMeasures = (place: Place): readonly TableVariant[] => {
  const choice = choiceOf(place);
  const cut = cutLogs(place);
  const told = toldAsRead(cut);
  if (!told) return [];
  const made = (way: ToldWay) => variantOf({ ...choice, told: way.told }, way.how, place);
  const asRead = made({ how: 'as-read', told });
  const ways = toldOtherwise(cut, told, place.material.stage).filter(
    (way) => !losesAny(cut, way.told),
  );
  const inOneUnit = ways.filter(({ how }) => how === 'one-unit').flatMap(made);
  if ([...asRead, ...inOneUnit].some(isReady) || asRead.some(needsMore)) {
    return [...asRead, ...inOneUnit];
  }
  // Another unit makes a table fit the paper; it is no cure for numbers that all differ.
  const isTooLarge = asRead.some((variant) => saysNo(variant));
  const otherwise = ways
    .filter(({ how }) => how === 'coarser-mark' || (how === 'other-unit' && isTooLarge))
    .flatMap(made)
    .find(isReady);
  return [...asRead, ...inOneUnit, ...(otherwise ? [otherwise] : [])];
};

const choiceOf = ({ source, logs, span: { from, to }, material }: Place): TableChoice => ({
  ...{ source, investigation: material.investigation.id, from, to, told: null, mostKinds: null },
  specimens: logs.map(({ specimen }) => specimen.id),
});

const cutLogs = ({ logs, span }: Place): readonly Series[] =>
  logs.map((series) => cutToDays(series, span));

const variantOf = (choice: TableChoice, told: ToldHow, place: Place): readonly TableVariant[] => {
  const { logs, span, material } = place;
  const { notebook, stage, investigation } = material;
  const table = tableFrom(choice, logs, notebook);
  if (!table) return [];
  const have =
    table.form === 'counts' ? thingsCounted(choice.source, cutLogs(place)) : numbersIn(table);
  return [
    {
      ...{ choice, span: span.span, told, have, together: choice.mostKinds !== null },
      aboutCount: textsOf(table).filter((text) => text.startsWith('about ')).length,
      tableReady: have >= fewestForTable,
      graphs: readinessOf(table, stage, subjectOf(choice.source, investigation), have),
    },
  ];
};

const textsOf = (table: GraphTable): readonly string[] => {
  if (table.form === 'counts') return [];
  return (table.form === 'measures' ? table.values : table.rows).map(({ text }) => text);
};

/** Whether a graph has no right one, for this reason or for any. */
const saysNo = ({ graphs }: TableVariant, why?: NoGraph['kind']): boolean =>
  graphs.some(({ missing }) =>
    missing.some((each) => each.kind === 'no-graph' && (!why || each.why.kind === why)),
  );

/** Telling it otherwise makes no more readings. */
const needsMore = ({ graphs }: TableVariant): boolean =>
  graphs.some(({ missing }) => missing.some(({ kind }) => kind === 'more-needed'));
