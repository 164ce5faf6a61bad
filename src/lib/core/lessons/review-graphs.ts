import { oneOf, type Random } from '#core/base';
import { addDays, daysBetween, type CivilDay } from '#core/calendar';
import {
  fewestByForm,
  isBeingDrawn,
  numbersIn,
  tableChoicesOf,
  type TableChoice,
} from '#core/graphs';
import type { Investigation, Notebook, Stage } from '#core/journal';
import { daysThrough, investigationsInOrder } from './review-own-numbers';
import {
  answerableOf,
  reviewFactsOf,
  type QuestionAbout,
  type ReviewQuestion,
} from './review-question';

/**
 * The questions a review can ask about graphs that are ready, of the first
 * investigation that has any, all about one of its graphs. A graph of a log that a child is drawing just now is never shown. Not part
 * of the public door.
 * @param through what was written for later days does not count
 */
export const questionsThrough = (
  notebook: Notebook,
  stage: Stage,
  through: CivilDay,
  isWanted: (asked: ReviewQuestion) => boolean,
  random: Random,
): readonly ReviewQuestion[] => {
  const before = daysThrough(notebook, through);
  for (const investigation of investigationsInOrder(before)) {
    const found = firstAsked(before, graphsOf(before, investigation, stage, through, null), {
      ...{ isWanted, random },
    });
    if (found.length > 0) return found;
  }
  return [];
};

/**
 * The same about data that end at a day, or the nearest before it, and go back at most two weeks:
 * what was measured then. Not part of the public door.
 */
export const questionsFromBefore = (
  notebook: Notebook,
  stage: Stage,
  target: CivilDay,
  isWanted: (asked: ReviewQuestion) => boolean,
  random: Random,
): readonly ReviewQuestion[] => {
  for (const investigation of investigationsInOrder(notebook)) {
    const last = lastLineThrough(notebook, investigation, target);
    if (last === null) continue;
    const before = daysThrough(notebook, last);
    const from = addDays(last, 1 - spanDays);
    const found = firstAsked(before, graphsOf(before, investigation, stage, last, from), {
      ...{ isWanted, random },
    });
    if (found.length > 0) return found;
  }
  return [];
};

const graphsOf = (
  notebook: Notebook,
  { id }: Investigation,
  stage: Stage,
  through: CivilDay,
  from: CivilDay | null,
): readonly QuestionAbout[] =>
  tableChoicesOf(notebook, { investigation: id }, stage, through)
    .flatMap(({ variants }) => variants.slice(0, 1))
    .filter(({ told, choice }) => (told === null || told === 'as-read') && !choice.givenSteps)
    .flatMap(({ choice, graphs }) =>
      graphs
        .filter(({ fit }) => fit !== 'later')
        .map(({ graph }) => ({ graph, choice: cutTo(choice, from, through) })),
    )
    .filter(({ choice }) => choice.from <= choice.to && !isBeingDrawn(notebook, choice))
    .map(({ graph, choice }) => ({ kind: 'log', choice, graph, stage, through }));

/** The wanted questions of the first graph, in an order left to chance, that has any. */
const firstAsked = (
  notebook: Notebook,
  graphs: readonly QuestionAbout[],
  { isWanted, random }: { isWanted: (asked: ReviewQuestion) => boolean; random: Random },
): readonly ReviewQuestion[] => {
  const left = [...graphs];
  while (left.length > 0) {
    const about = oneOf(left, random);
    left.splice(left.indexOf(about), 1);
    const facts = reviewFactsOf(notebook, about);
    if (!facts.ok || numbersIn(facts.value.table) < fewestByForm[facts.value.table.form]) continue;
    const found = answerableOf(facts.value, about).filter(isWanted);
    if (found.length > 0) return found;
  }
  return [];
};

/** Days after the last that counts are left out: nobody had written anything there yet. */
const cutTo = (choice: TableChoice, from: CivilDay | null, to: CivilDay): TableChoice => ({
  ...choice,
  from: from !== null && from > choice.from ? from : choice.from,
  to: to < choice.to ? to : choice.to,
});

const lastLineThrough = (
  notebook: Notebook,
  investigation: Investigation,
  target: CivilDay,
): CivilDay | null =>
  [...notebook.specimens.values()]
    .filter((specimen) => specimen.investigation === investigation.id)
    .flatMap(({ id }) => {
      const log = notebook.logBySpecimen.get(id);
      return [...(log?.readings ?? []), ...(log?.kindNotes ?? [])];
    })
    .map(({ day }) => day)
    .filter((day) => daysBetween(day, target) >= 0)
    .reduce<CivilDay | null>((last, day) => (last === null || day > last ? day : last), null);

/** Two weeks: as much as a graph from then shows. */
const spanDays = 14;
