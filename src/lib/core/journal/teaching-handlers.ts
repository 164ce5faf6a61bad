import type { FoldHandler } from './fold-handler';
import { lineOf } from './line';
import type { teachingBodies } from './teaching-bodies';

type TeachingKind = keyof typeof teachingBodies;

/** What each kind of teaching adds: see `foldHandlers` for the rules they share. */
export const teachingHandlers: { readonly [Kind in TeachingKind]: FoldHandler<Kind> } = {
  'lesson-made': ({ teaching }, entry, takenBack) => {
    if (takenBack || teaching.lessons.has(entry.lesson)) return;
    const { lesson: id, investigation, specimen, graph, choice, purpose } = entry;
    const { minutes, stage, seed, at: madeAt, author } = entry;
    teaching.lessons.set(id, {
      ...{ id, investigation, graph, choice, purpose, minutes, stage, seed, madeAt, author },
      ...(specimen === undefined ? {} : { specimen }),
      changes: [],
      givenOn: [],
    });
  },
  'lesson-changed': ({ teaching }, entry, takenBack) => {
    const lesson = teaching.lessons.get(entry.lesson);
    if (takenBack || !lesson) return;
    teaching.lessons.set(lesson.id, { ...lesson, changes: [...lesson.changes, entry.to] });
  },
  'lesson-given': ({ teaching }, entry, takenBack) => {
    const lesson = teaching.lessons.get(entry.lesson);
    if (takenBack || !lesson) return;
    teaching.lessons.set(lesson.id, { ...lesson, givenOn: [...lesson.givenOn, entry.day] });
  },
  'question-answered': ({ teaching }, entry, takenBack) => {
    const { lesson, question, answer, how } = entry;
    teaching.answers.push({
      ...{ ...lineOf(entry, takenBack), question, answer, how },
      ...(lesson === undefined ? {} : { lesson }),
    });
  },
  'question-written': ({ teaching }, entry, takenBack) => {
    const { lesson, level, text, answer } = entry;
    teaching.ownQuestions.push({
      ...{ ...lineOf(entry, takenBack), level, text },
      ...(lesson === undefined ? {} : { lesson }),
      ...(answer === undefined ? {} : { answer }),
    });
  },
  'review-answered': ({ teaching }, entry, takenBack) => {
    const { item, answer, outcome } = entry;
    teaching.reviews.push({ ...lineOf(entry, takenBack), item, answer, outcome });
  },
  'evidence-noted': ({ teaching }, entry, takenBack) => {
    const { person, skill, how, drawing, answer, note } = entry;
    teaching.evidence.push({
      ...{ ...lineOf(entry, takenBack), person, skill, how },
      ...(drawing === undefined ? {} : { drawing }),
      ...(answer === undefined ? {} : { answer }),
      ...(note === undefined ? {} : { note }),
    });
  },
};
