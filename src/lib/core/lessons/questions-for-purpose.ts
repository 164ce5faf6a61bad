import {
  chooseQuestions,
  questionsOf,
  type AskedQuestion,
  type ChosenQuestions,
  type LessonFacts,
  type QuestionId,
} from '#core/questions';
import type { PurposeId } from './lesson-purpose';
import { standsBeside } from './questions-standing';

/** The templates that ask just what a purpose is for. Not part of the public door. */
export const templatesByPurpose: Readonly<Partial<Record<PurposeId, readonly QuestionId[]>>> = {
  'how-much-taller': ['C2'],
  'two-units-of-one-thing': ['H4'],
  'fair-test-of-two': ['C13', 'H5'],
  'two-side-by-side': ['C13'],
};

/**
 * The questions of a lesson, as they are chosen for any lesson of these facts; where none of them
 * asks what the purpose is for and the log has such a question, it takes the place of another of
 * its level, of one that is not the only one about the whole set. Not part of the public door.
 */
export const questionsForPurpose = (
  facts: LessonFacts,
  purpose: PurposeId,
  seed: number,
): ChosenQuestions => {
  const wanted = templatesByPurpose[purpose] ?? [];
  const chosen = chooseQuestions(facts, seed);
  if (wanted.length === 0) return chosen;
  const possible = questionsOf(facts);
  return wanted.reduce<ChosenQuestions>((before, id) => {
    const ways = possible.filter(({ template }) => template === id);
    return withOneOf(before, turned(ways, seed), wanted);
  }, chosen);
};

/** Begun at another place for another seed. */
const turned = <Item>(items: readonly Item[], by: number): readonly Item[] => [
  ...items.slice(by % Math.max(1, items.length)),
  ...items.slice(0, by % Math.max(1, items.length)),
];

const withOneOf = (
  chosen: ChosenQuestions,
  ways: readonly AskedQuestion[],
  wanted: readonly QuestionId[],
): ChosenQuestions => {
  const { read, between, beyond, behind } = chosen;
  const all = [...read, ...between, ...beyond, ...behind];
  const [first] = ways;
  if (!first || all.some(({ template }) => template === first.template)) return chosen;
  const { level } = first;
  const replaced = chosen[level].findLast(
    (each) =>
      !wanted.includes(each.template) && all.some((other) => other !== each && other.wholeSet),
  );
  const isFull = !chosen.missing.some((each) => each.level === level) && chosen[level].length > 0;
  if (isFull && !replaced) return chosen;
  const others = all.filter((each) => each !== (isFull ? replaced : undefined));
  const way = ways.find((each) => standsBeside(each, others));
  if (!way) return chosen;
  return {
    ...chosen,
    [level]: [...chosen[level].filter((each) => others.includes(each)), way],
    missing: chosen.missing.flatMap((each) => {
      if (each.level !== level) return [each];
      return each.lacks > 1 ? [{ ...each, lacks: each.lacks - 1 }] : [];
    }),
  };
};
