import { behindTemplates } from './behind-templates';
import { betweenTemplates } from './between-templates';
import { beyondTemplates } from './beyond-templates';
import type { LessonFacts } from './lesson-facts';
import type { AskedQuestion, QuestionTemplate } from './question';
import { readTemplates } from './read-templates';

/** Every template of the ladder, in order of ids. */
export const everyTemplate: readonly QuestionTemplate[] = [
  ...readTemplates,
  ...betweenTemplates,
  ...beyondTemplates,
  ...behindTemplates,
];

/**
 * Every valid question of every template about a graph, within the number ranges of the stage, in
 * a fixed order.
 * @example
 * questionsOf({ graph: 'bar-graph', ranges: [], table: { form: 'counts', rows: [] }, choice: {} }) // => []
 */
export const questionsOf = (facts: LessonFacts): readonly AskedQuestion[] =>
  everyTemplate
    .filter(({ graphs }) => graphs.includes(facts.graph))
    .filter(({ ranges }) => ranges.some((range) => facts.ranges.includes(range)))
    .flatMap((template) => template.ask(facts));
