import type { GraphKind, MistakeId } from '#core/graphs';
import type { LessonFacts } from '#core/questions';
import type { PurposeId } from './lesson-purpose';

/** The features a lesson can teach, one at a time. */
export const featureIds = [
  ...(['one-picture-each', 'key-with-number', 'bars-from-zero', 'missed-day-keeps-place'] as const),
  ...(['one-cross-each', 'parts-of-a-unit', 'along-then-up', 'gaps-are-dashed'] as const),
  ...(['jump-is-the-difference', 'smaller-unit-more-units', 'guess-then-measure'] as const),
  'whose-line',
] as const;
export type FeatureId = (typeof featureIds)[number];

/** What to lay ready: things of a household. */
export const materialIds = [
  ...(['squared-paper', 'pencil', 'ruler', 'own-table', 'counters', 'strips'] as const),
  ...(['number-line', 'two-sided-ruler', 'two-colours', 'sticky-notes'] as const),
] as const;
export type MaterialId = (typeof materialIds)[number];

/** Words of the day: each has a card. */
export const wordIds = [
  ...(['row', 'key', 'scale', 'bar', 'category', 'number-line', 'unit', 'point', 'gap'] as const),
  ...(['join', 'jump', 'difference', 'inch', 'centimetre', 'guess', 'about', 'fair-test'] as const),
  'change',
] as const;
export type WordId = (typeof wordIds)[number];

export interface Teaching {
  readonly feature: FeatureId;
  readonly materials: readonly MaterialId[];
  readonly words: readonly WordId[];
  /** The likeliest first, at most four. */
  readonly watchFor: readonly MistakeId[];
}

/**
 * The one feature to teach with a table, what to lay ready, the words of the day, and the mistakes
 * that are most likely with just this table (common practice, no source): a key above 1, a kind
 * that never came, a day without a number, repeats, parts of a unit and two logs each bring theirs.
 * A purpose of its own kind brings its own feature, materials and words.
 * @example
 * teachingOf({ graph: 'line-plot', right: { keyValue: null, scale: { step: 1 } }, table: { form: 'measures', unit: 'cm', mark: '1 cm', unmeasured: [], seriesNames: ['bean'] } }).watchFor // => ['L2', 'L10', 'L6', 'L11']
 */
export const teachingOf = (
  facts: Pick<LessonFacts, 'graph' | 'right' | 'table'>,
  purpose?: PurposeId,
): Teaching => {
  const hasGap = hasMissing(facts);
  const watch = [...likelyWith(facts, hasGap), ...usual[facts.graph]];
  const watchFor = [...new Set(watch)].slice(0, 4);
  const ofGraph = teachingOfGraph(facts, hasGap);
  const own = purpose && byPurpose[purpose];
  if (!own) return { ...ofGraph, watchFor };
  const materials = [...new Set([...ofGraph.materials, ...own.materials])].filter(
    (each) => each !== 'ruler' || !own.materials.includes('two-sided-ruler'),
  );
  return { feature: own.feature, words: own.words, materials, watchFor };
};

type OfGraph = Omit<Teaching, 'watchFor'>;

const byPurpose: Readonly<Partial<Record<PurposeId, OfGraph>>> = {
  'how-much-taller': {
    ...{ feature: 'jump-is-the-difference', materials: ['number-line'] },
    words: ['jump', 'difference', 'number-line'],
  },
  'two-units-of-one-thing': {
    ...{ feature: 'smaller-unit-more-units', materials: ['two-sided-ruler'] },
    words: ['unit', 'inch', 'centimetre'],
  },
  'guess-before-measuring': {
    ...{ feature: 'guess-then-measure', materials: ['sticky-notes'] },
    words: ['guess', 'about', 'unit'],
  },
  'two-side-by-side': {
    ...{ feature: 'bars-from-zero', materials: ['strips'], words: ['bar', 'scale', 'difference'] },
  },
  'fair-test-of-two': {
    ...{ feature: 'whose-line', materials: ['two-colours'], words: ['fair-test', 'change', 'key'] },
  },
};

const always: readonly MaterialId[] = ['squared-paper', 'pencil', 'ruler', 'own-table'];

const teachingOfGraph = (
  facts: Pick<LessonFacts, 'graph' | 'right' | 'table'>,
  hasGap: boolean,
): OfGraph => {
  const { graph, right, table } = facts;
  switch (graph) {
    case 'picture-graph':
      return {
        feature: (right.keyValue ?? 1) > 1 ? 'key-with-number' : 'one-picture-each',
        ...{ materials: [...always, 'counters'], words: ['row', 'key'] },
      };
    case 'bar-graph':
      return {
        feature: hasGap ? 'missed-day-keeps-place' : 'bars-from-zero',
        materials: always,
        words: table.form === 'counts' ? ['bar', 'scale', 'category'] : ['bar', 'scale', 'unit'],
      };
    case 'line-plot':
      return {
        feature: hasParts(facts) ? 'parts-of-a-unit' : 'one-cross-each',
        ...{ materials: always, words: ['number-line', 'unit'] },
      };
    case 'line-graph':
      return {
        feature: hasGap ? 'gaps-are-dashed' : 'along-then-up',
        ...{ materials: always, words: hasGap ? ['point', 'join', 'gap'] : ['point', 'join'] },
      };
  }
};

const usual: Readonly<Record<GraphKind, readonly MistakeId[]>> = {
  'picture-graph': ['P6', 'P2', 'P5', 'P1'],
  'bar-graph': ['B1', 'B8', 'B10', 'B6'],
  'line-plot': ['L2', 'L10', 'L6', 'L11'],
  'line-graph': ['T1', 'T8', 'T10', 'T4'],
};

const likelyWith = (
  facts: Pick<LessonFacts, 'graph' | 'right' | 'table'>,
  hasGap: boolean,
): readonly MistakeId[] => {
  const { table, graph, right } = facts;
  const isScaled = (right.keyValue ?? 1) > 1;
  const hasZero = table.form === 'counts' && table.rows.some(({ count }) => count === 0);
  const hasOdd =
    table.form === 'counts' &&
    right.scale.step === 2 &&
    table.rows.some(({ count }) => count % 2 === 1);
  const isOfTwo = 'seriesNames' in table && table.seriesNames.length > 1;
  const found: readonly (readonly [GraphKind, boolean, MistakeId])[] = [
    ['picture-graph', isScaled, 'P7'],
    ['picture-graph', hasZero, 'P11'],
    ['bar-graph', hasZero, 'B11'],
    ['bar-graph', hasOdd, 'B14'],
    ['bar-graph', hasGap, 'B15'],
    ['line-plot', hasGap, 'L12'],
    ['line-plot', hasParts(facts), 'L13'],
    ['line-plot', isOfTwo, 'L15'],
    ['line-graph', hasGap, 'T2'],
    ['line-graph', isOfTwo, 'T12'],
  ];
  return found.flatMap(([kind, holds, id]) => (kind === graph && holds ? [id] : []));
};

/** A day of the table that has a state and no number. */
const hasMissing = ({ table }: Pick<LessonFacts, 'table'>): boolean => {
  if (table.form === 'counts') return false;
  if (table.form === 'measures') return table.unmeasured.length > 0;
  return table.rows.some(({ exact }) => exact === null);
};

const hasParts = ({ table }: Pick<LessonFacts, 'table'>): boolean =>
  table.form === 'measures' && table.unit === 'in' && table.mark !== '1 in';
