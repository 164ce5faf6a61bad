import * as v from 'valibot';
import {
  day,
  drawingId,
  entryId,
  investigationId,
  lessonId,
  name,
  personId,
  prose,
  sentence,
  sheet,
  specimenId,
} from './field-schemas';
import * as words from './vocabulary';

/** Entries of teaching with the log: lessons, answers, the daily review, and what was seen. */
export const teachingBodies = {
  'lesson-made': {
    lesson: lessonId,
    investigation: investigationId,
    specimen: v.optional(specimenId),
    /** Which graph, which table it is of, and what it is to teach: see lessons. */
    graph: name,
    choice: sheet,
    purpose: name,
    minutes: v.picklist(words.lessonMinutes),
    stage: v.picklist(words.stages),
    /** The same seed chooses the same questions. */
    seed: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  },
  /** The grown-up's own words in place of the plan's, and questions left out or put in. */
  'lesson-changed': { lesson: lessonId, to: sheet },
  'lesson-given': { lesson: lessonId, day },
  'question-answered': {
    lesson: v.optional(lessonId),
    /** The question as it was asked: its template and what stood in it. */
    question: sheet,
    day,
    answer: prose,
    how: v.picklist(words.evidenceLevels),
  },
  /** A question of the child's own. */
  'question-written': {
    lesson: v.optional(lessonId),
    level: v.picklist(words.ownQuestionLevels),
    day,
    text: sentence,
    answer: v.optional(sentence),
  },
  'review-answered': {
    /** The item as it was asked, with the name it is asked again by. */
    item: sheet,
    day,
    answer: prose,
    outcome: v.picklist(words.reviewOutcomes),
  },
  'evidence-noted': {
    person: personId,
    skill: name,
    how: v.picklist(words.evidenceLevels),
    day,
    drawing: v.optional(drawingId),
    answer: v.optional(entryId),
    note: v.optional(prose),
  },
} as const;
