import {
  drawRight,
  graphKinds,
  rightGraphOf,
  type Drawing,
  type GraphKind,
  type GraphTable,
  type MistakeId,
  type RightGraph,
} from '#core/graphs';
import { stages, type Stage } from '#core/journal';
import { practiceTable } from './practice-table';
import type { AskedQuestion } from './question';

/** A made-up graph with one flaw in it, by the graph's own list of mistakes. */
export interface FlawedPractice {
  readonly isPractice: true;
  readonly seed: number;
  readonly flaw: FlawId;
  /** The made-up numbers, to be shown beside the drawing. */
  readonly table: GraphTable;
  /** What a right drawing of them has. */
  readonly right: RightGraph;
  /** As it is shown, with its flaw. */
  readonly drawing: Drawing;
}

/** The flaws that can trick a reader, and that are planted: a row of pictures of other size, a fat
 * bar, uneven jumps on the number line, a side scale with uneven jumps. */
export const flawIds = ['P3', 'B7', 'L4', 'T6'] as const satisfies readonly MistakeId[];
export type FlawId = (typeof flawIds)[number];

/**
 * The practice graph that a flaw is looked for in, the same for the same seed.
 * @example
 * flawedPractice('bar-graph', 'grade-2', 1).flaw // => 'B7'
 */
export const flawedPractice = (kind: GraphKind, stage: Stage, seed: number): FlawedPractice => {
  const { form, flaw, plant } = flaws[kind];
  const { table } = practiceTable(form, { unit: 'cm', mark: '1 cm' }, seed);
  const right = rightGraphOf(kind, table, stage);
  if (!right.ok) throw new Error(`Practice numbers make no ${kind}: ${right.error.kind}`);
  const drawing = plant(drawRight(right.value));
  return { isPractice: true, seed, flaw, table, right: right.value, drawing };
};

/**
 * The practice graph that a question (H6) is about, made of the question alone, so that every page
 * and every day shows the same; null for any other question.
 * @example
 * practiceAskedAbout({ blanks: { practice: { kind: 'word', word: 'bar-graph' }, stage: { kind: 'word', word: 'grade-2' }, seed: { kind: 'count', count: 3, of: 'seed' } } })?.flaw // => 'B7'
 * practiceAskedAbout({ blanks: {} }) // => null
 */
export const practiceAskedAbout = ({
  blanks,
}: Pick<AskedQuestion, 'blanks'>): FlawedPractice | null => {
  const { practice, stage, seed } = blanks;
  if (practice?.kind !== 'word' || stage?.kind !== 'word' || seed?.kind !== 'count') return null;
  const kind = graphKinds.find((each) => each === practice.word);
  const asked = stages.find((each) => each === stage.word);
  return kind && asked ? flawedPractice(kind, asked, seed.count) : null;
};

/** The flaw of a kind of graph. Not part of the public door. */
export const flawOf = (kind: GraphKind): FlawId => flaws[kind].flaw;

interface Flaw {
  readonly form: 'counts' | 'measures' | 'times';
  readonly flaw: FlawId;
  readonly plant: (drawing: Drawing) => Drawing;
}

/** The pictures of one row are half as large, so that it looks less than it is. */
const smallPictures = (drawing: Drawing): Drawing => {
  const row = drawing.symbols[0]?.row;
  return {
    ...drawing,
    symbols: drawing.symbols.map((each) =>
      each.row === row ? { ...each, size: each.size / 2 } : each,
    ),
  };
};

const fatBar = (drawing: Drawing): Drawing => ({
  ...drawing,
  bars: drawing.bars.map((bar, index) => (index === 0 ? { ...bar, width: bar.width * 1.8 } : bar)),
});

/** The first jump is twice as wide, and everything after it moves along. */
const wideFirstJump = (drawing: Drawing): Drawing => {
  const [first] = drawing.bottom.ticks;
  const moved = (at: number): number => (first && at > first.at ? at + 1 : at);
  return {
    ...drawing,
    paper: { ...drawing.paper, columns: drawing.paper.columns + 1 },
    bottom: {
      ...drawing.bottom,
      ticks: drawing.bottom.ticks.map((tick) => ({ ...tick, at: moved(tick.at) })),
    },
    crosses: drawing.crosses.map((cross) => ({ ...cross, at: moved(cross.at) })),
  };
};

/** The same up the side: the points go along with their numbers. */
const highFirstJump = (drawing: Drawing): Drawing => {
  const [first] = drawing.side.ticks;
  const moved = (at: number): number => (first && at > first.at ? at + 1 : at);
  return {
    ...drawing,
    paper: { ...drawing.paper, rows: drawing.paper.rows + 1 },
    side: {
      ...drawing.side,
      ticks: drawing.side.ticks.map((tick) => ({ ...tick, at: moved(tick.at) })),
    },
    points: drawing.points.map((point) => ({ ...point, y: moved(point.y) })),
  };
};

const flaws: Readonly<Record<GraphKind, Flaw>> = {
  'picture-graph': { form: 'counts', flaw: 'P3', plant: smallPictures },
  'bar-graph': { form: 'counts', flaw: 'B7', plant: fatBar },
  'line-plot': { form: 'measures', flaw: 'L4', plant: wideFirstJump },
  'line-graph': { form: 'times', flaw: 'T6', plant: highFirstJump },
};
