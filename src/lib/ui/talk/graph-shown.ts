import {
  decodeTableChoice,
  drawRight,
  isBeingDrawn,
  isDrawingFinished,
  lastDrawing,
  type Drawing,
} from '#core/graphs';
import type { Notebook, PersonId } from '#core/journal';
import {
  flawedPractice,
  type AskedQuestion,
  type LessonFacts,
  type QuestionId,
} from '#core/questions';

/** What stands beside a question. */
export type GraphShown =
  | { readonly kind: 'own'; readonly drawing: Drawing }
  | { readonly kind: 'computer'; readonly drawing: Drawing }
  | { readonly kind: 'practice'; readonly drawing: Drawing }
  /** A drawing of the log is open: the graph is not shown before the child has drawn it. */
  | { readonly kind: 'table' };

/**
 * The child's own finished drawing of the table; else the computer's, but never while a drawing of
 * the same log is open: then the table alone.
 */
export function graphShown(
  notebook: Notebook,
  facts: LessonFacts,
  person: PersonId | null,
): GraphShown {
  const drawing = ownDrawing(notebook, facts, person);
  if (drawing) return { kind: 'own', drawing };
  if (isBeingDrawn(notebook, facts.choice)) return { kind: 'table' };
  return { kind: 'computer', drawing: drawRight(facts.right) };
}

/** The made-up graph that a question is about, where it is about one. */
export function practiceShown(question: AskedQuestion, facts: LessonFacts): GraphShown | null {
  const { practice, seed } = question.blanks;
  if (!practice || seed?.kind !== 'count') return null;
  const { drawing } = flawedPractice(facts.graph, facts.stage, seed.count);
  return { kind: 'practice', drawing };
}

/** Whether a question is about the graph itself, so that a table cannot answer it. */
export const needsGraph = ({ template }: Pick<AskedQuestion, 'template'>): boolean =>
  ofGraphs.has(template);

/** The key, what a cross means, the step at the side, marks to count, pictures that mean several. */
const ofGraphs: ReadonlySet<QuestionId> = new Set(['R4', 'R5', 'R7', 'C11', 'C14']);

const ownDrawing = (
  { drawings }: Notebook,
  { choice, graph }: LessonFacts,
  person: PersonId | null,
): Drawing | null => {
  const asked = JSON.stringify(decodeTableChoice(choice));
  const own = [...drawings.values()].findLast(
    (record) =>
      record.author === person &&
      record.graph === graph &&
      isDrawingFinished(record) &&
      JSON.stringify(decodeTableChoice(record.choice)) === asked,
  );
  const drawn = own?.versions.filter(({ paper }) => !Object.hasOwn(paper, 'tally')) ?? [];
  const drawing = lastDrawing(drawn);
  return drawing?.kind === graph ? drawing : null;
};
