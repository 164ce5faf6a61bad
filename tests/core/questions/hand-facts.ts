import type { GraphKind, TableChoice } from '#core/graphs';
import type { Notebook, Stage } from '#core/journal';
import { exactPerUnit, type MarkId, type Unit } from '#core/measure';
import {
  lessonFactsOf,
  questionsOf,
  type AskedQuestion,
  type QuestionId,
  type Told,
} from '#core/questions';
import { thing } from '../graphs/small-notebook';
import { march } from './hand-journal';

export interface HandAsking {
  /** The date in March 2026 on which it is asked. */
  readonly on: number;
  readonly source?: TableChoice['source'];
  readonly graph?: GraphKind;
  readonly stage?: Stage;
  readonly from?: number;
  readonly to?: number;
  readonly told?: readonly [Unit, MarkId] | null;
}

/** What a template asks of a notebook, by default of the line graph of all logs. */
export const askedOn = (
  id: QuestionId,
  notebook: Notebook,
  { on, source = 'days-in-order', graph = 'line-graph', stage = 'grade-2', ...more }: HandAsking,
): readonly AskedQuestion[] => {
  const { from = 2, to = 31, told = ['cm', '1 cm'] } = more;
  const facts = lessonFactsOf(
    notebook,
    {
      ...{ source, investigation: thing, specimens: [...notebook.specimens.keys()] },
      ...{ from: march(from), to: march(to), mostKinds: null },
      told: told && { unit: told[0], mark: told[1], converts: false },
    },
    ...([graph, stage, march(on)] as const),
  );
  if (!facts.ok) throw new Error(JSON.stringify(facts.error));
  return questionsOf(facts.value).filter(({ template }) => template === id);
};

export const lengthOf = (number: number, unit: Unit = 'cm', mark: MarkId = '1 cm'): Told => ({
  ...{ kind: 'length', exact: Math.round(number * exactPerUnit(unit)), unit, mark },
});
export const dayOf = (date: number): Told => ({ kind: 'day', day: march(date) });
export const spanOf = (low: Told, high: Told): Told => ({ kind: 'between', low, high });
export const ideaOf = (idea: string): Told => ({ kind: 'idea', idea });
export const wordOf = (word: string): Told => ({ kind: 'word', word });
