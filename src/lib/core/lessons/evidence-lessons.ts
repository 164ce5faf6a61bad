import type { CivilDay } from '#core/calendar';
import type { InvestigationId, Notebook, Stage } from '#core/journal';
import {
  everyTemplate,
  lessonFactsOf,
  rangesByStage,
  type QuestionTemplate,
} from '#core/questions';
import { purposesReady, type PurposeOffer } from './purposes-ready';
import type { Skill } from './skill';

/** A lesson that would show a skill, and whose log it is made of. */
export interface LessonShowing {
  readonly investigation: InvestigationId;
  readonly offer: PurposeOffer;
}

/**
 * The lessons in which a child could show a skill, those that are ready today first: its graph is
 * drawn, or the log holds a question of it, or it is a part of every lesson. Of several, those made
 * for it come first. Of a lesson that is
 * not ready yet only the kinds of questions are known, not whether its log will hold them.
 * Investigations that have ended are offered after those that go on.
 *
 * @param today the day it is where the family is
 * @example
 * lessonsShowing(skills[0], foldEntries([]), 'grade-2', '2026-03-10') // => []
 */
export const lessonsShowing = (
  skill: Skill,
  notebook: Notebook,
  stage: Stage,
  today: CivilDay,
): readonly LessonShowing[] => {
  const templates = everyTemplate.filter(
    ({ id, ranges }) =>
      skill.questions.includes(id) && ranges.some((range) => rangesByStage[stage].includes(range)),
  );
  const showing = [...notebook.investigations.values()]
    .sort((left, right) => Number(left.ended !== null) - Number(right.ended !== null))
    .flatMap(({ id }) =>
      purposesReady(notebook, { investigation: id }, stage, today)
        .filter((offer) => shows(offer, skill, templates, { notebook, stage, today }))
        .map((offer): LessonShowing => ({ investigation: id, offer })),
    );
  const order = ({ offer: { missing, purpose } }: LessonShowing): number =>
    (missing.length === 0 ? 0 : 2) + (skill.purposes.includes(purpose.id) ? 0 : 1);
  return showing.toSorted((left, right) => order(left) - order(right));
};

const shows = (
  { purpose, choice, missing }: PurposeOffer,
  { graphs, purposes, inEveryLesson }: Skill,
  templates: readonly QuestionTemplate[],
  at: { readonly notebook: Notebook; readonly stage: Stage; readonly today: CivilDay },
): boolean => {
  if (inEveryLesson || graphs.includes(purpose.graph) || purposes.includes(purpose.id)) return true;
  const possible = templates.filter((template) => template.graphs.includes(purpose.graph));
  if (possible.length === 0 || missing.length > 0) return possible.length > 0;
  const facts = lessonFactsOf(at.notebook, choice, purpose.graph, at.stage, at.today);
  return facts.ok && possible.some((template) => template.ask(facts.value).length > 0);
};
