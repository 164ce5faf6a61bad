import type { AskedQuestion, LessonFacts, QuestionId } from '#core/questions';
import type { GraphShown } from './graph-shown';

/** What is right about an answer: the way it was found, or the fact. Never a score. */
export function rightText(
  { template }: AskedQuestion,
  shown: GraphShown['kind'],
  { graph }: Pick<LessonFacts, 'graph'>,
): string {
  if (template === 'R1') return shown === 'table' ? byTable : read[graph];
  if (template === 'R3') return shown === 'table' ? byTable : found[graph];
  return byTemplate[template] ?? 'Yes. You looked with care.';
}

const byTable = 'Yes. You found the day and its number.';

const read: Readonly<Record<LessonFacts['graph'], string>> = {
  'picture-graph': 'Yes. You counted the pictures in that row.',
  'bar-graph': 'Yes. You read the top of the bar.',
  'line-plot': 'Yes. You read the number under it.',
  'line-graph': 'Yes. You read how high the point is.',
};

const found: Readonly<Record<LessonFacts['graph'], string>> = {
  ...read,
  'bar-graph': 'Yes. You found the bar that is so tall.',
  'line-graph': 'Yes. You found the point that is so high.',
};

const byTemplate: Readonly<Partial<Record<QuestionId, string>>> = {
  R2: 'Yes. You counted each one, and just once.',
  R4: 'Yes. The key tells what one picture is.',
  R5: 'Yes. Each X stands for one measure.',
  R6: 'Yes. You counted the X marks in that pile.',
  R7: 'Yes. You looked from one line to the next.',
  R8: 'Yes. A day with no mark was not measured.',
  R9: 'Yes. A read 0 tells us. A blank does not.',
  R10: 'Yes. You found the time and its number.',
  C1: 'Yes. You looked at what has no pair.',
  C2: 'Yes. You looked at the step in between.',
  C3: 'Yes. You put both kinds together.',
  C4: 'Yes. You put all the kinds together.',
  C5: 'Yes. You looked from one day to the next.',
  C6: 'Yes. You began with the least.',
  C7: 'Yes. That step up is the biggest one.',
  C8: 'Yes. You shared it out, day by day.',
  C9: 'Yes. That pile is the tallest.',
  C10: 'Yes. You went from the smallest to the largest.',
  C11: 'Yes. You counted that pile and all after it.',
  C12: 'Yes. You did one step, then the next.',
  C13: 'Yes. You held both plants side by side.',
  C14: 'Yes. You used the key to count.',
  H9: 'Yes. The graph has no way to show that.',
};

/** The answer to somebody's own question, just as its writer has it. */
export const ownRight = 'Yes. That is what the writer says, too.';
