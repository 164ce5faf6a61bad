import type { QuestionTemplate } from './question';

/** The templates of this level, in order of their ids. Not part of the public door. */
export const beyondTemplates: readonly QuestionTemplate[] = [];
