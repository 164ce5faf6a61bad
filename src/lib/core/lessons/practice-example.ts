import {
  drawRight,
  rightGraphOf,
  withTitle,
  type Drawing,
  type GraphTable,
  type RightGraph,
} from '#core/graphs';
import type { MarkId } from '#core/measure';
import type { LessonFacts } from '#core/questions';
import {
  practiceStory,
  type PracticeStory,
  type PracticeStoryId,
  type PracticeTold,
} from './practice-story';
import { teachingOf, type FeatureId } from './teaching-of';

/** A worked example on made-up numbers: "practice numbers, not ours". */
export interface PracticeExample extends PracticeStory {
  readonly isPractice: true;
  readonly seed: number;
  readonly right: RightGraph;
  readonly drawing: Drawing;
}

/**
 * A worked example for a family's graph: of the same kind, about something else, with just what the
 * feature needs to be shown, and never the family's own numbers: a seed whose numbers, put in
 * order, are the family's is passed over for the next one. The same facts, feature and seed make
 * the same example. Lengths are whole centimetres or inches, but where parts of an inch are taught.
 *
 * @param feature the one that is taught; by itself the first one of the graph
 * @example
 * practiceExample({ graph: 'bar-graph', stage: 'grade-2', table: { form: 'counts', counted: 'days', rows: [] }, right: { keyValue: null, scale: { step: 1 } } }, 1).story // => 'toys'
 */
export const practiceExample = (
  facts: Pick<LessonFacts, 'graph' | 'table' | 'stage' | 'right'>,
  seed: number,
  feature: FeatureId = teachingOf(facts).feature,
): PracticeExample => {
  const { graph, table, stage } = facts;
  for (let tried = 0; tried < mostTries; tried += 1) {
    const made = practiceStory(feature, table.form, toldOf(facts, feature), seed + tried);
    if (numbersOf(made.table) === numbersOf(table)) continue;
    const right = rightGraphOf(graph, made.table, stage);
    if (!right.ok) throw new Error(`Practice numbers make no ${graph}: ${right.error.kind}`);
    const drawing = withTitle(drawRight(right.value), titles[made.story]);
    return { isPractice: true, seed: seed + tried, ...made, right: right.value, drawing };
  }
  throw new Error('No practice numbers differ from these');
};

const mostTries = 20;

/** A right drawing calls its numbers ours, and these are not. */
const titles: Readonly<Record<PracticeStoryId, string>> = {
  toys: 'Toys on the shelf',
  towers: 'How tall the towers are',
  snowman: 'How tall the snowman was',
  'two-snowmen': 'How tall the two snowmen were',
  'tower-by-day': 'How tall the tower was',
  ribbons: 'How long the ribbons are',
  pencils: 'How long the pencils are',
  'cut-ribbons': 'How long the ribbons are',
};

const toldOf = (
  { table, right }: Pick<LessonFacts, 'table' | 'right'>,
  feature: FeatureId,
): PracticeTold => {
  const keyValue = right.keyValue ?? 1;
  if (table.form === 'counts' || table.unit !== 'in') return { unit: 'cm', mark: '1 cm', keyValue };
  const mark: MarkId = feature !== 'parts-of-a-unit' ? '1 in' : halvesOrQuarters(table.mark);
  return { unit: 'in', mark, keyValue };
};

/** Eighths are shown with halves and quarters, which a line plot of this age is about. */
const halvesOrQuarters = (mark: MarkId): MarkId => (mark === '1/2 in' ? '1/2 in' : '1/4 in');

const numbersOf = (table: GraphTable): string => {
  if (table.form === 'counts') return sorted(table.rows.map(({ count }) => count));
  const rows = table.form === 'measures' ? table.values : table.rows;
  return sorted(rows.flatMap(({ exact }) => exact ?? []));
};

const sorted = (numbers: readonly number[]): string =>
  numbers.toSorted((one, other) => one - other).join(' ');
