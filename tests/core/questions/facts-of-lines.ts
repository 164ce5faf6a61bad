import { civilDay } from '#core/calendar';
import type { GraphKind, TableSource } from '#core/graphs';
import type { Notebook, Stage } from '#core/journal';
import { lessonFactsOf, questionsOf, type AskedQuestion, type LessonFacts } from '#core/questions';
import type { MarkId, Unit } from '#core/measure';
import { notebookOf, specimenId, thing, type Line } from '../graphs/small-notebook';

export interface Asking {
  readonly source: TableSource;
  readonly graph: GraphKind;
  readonly stage?: Stage;
  readonly from?: string;
  readonly to?: string;
  readonly told?: readonly [Unit, MarkId];
  readonly mostKinds?: number;
}

/** The facts of one graph of a small notebook; throws what kept it from being one. */
export const factsOf = (notebook: Notebook, asking: Asking): LessonFacts => {
  const { source, graph, stage = 'grade-2', mostKinds = null } = asking;
  const { from = '2026-03-02', to = '2026-03-31', told = ['cm', '1 cm'] } = asking;
  const isCount = source.endsWith('-days') || source === 'specimen-readings';
  const facts = lessonFactsOf(
    notebook,
    {
      ...{ source, investigation: thing, mostKinds, from: civilDay(from), to: civilDay(to) },
      specimens: [...notebook.specimens.keys()],
      told: isCount ? null : { unit: told[0], mark: told[1], converts: false },
    },
    ...([graph, stage, civilDay('2026-03-31')] as const),
  );
  if (!facts.ok) throw new Error(JSON.stringify(facts.error));
  return facts.value;
};

/** Numbers from 2 March on, one a day; null is a day left blank, a word is a state. */
export const daily = (written: readonly (number | string | null)[], more: Partial<Line> = {}) =>
  written.flatMap((each, index): readonly Line[] => {
    const day = `2026-03-${String(index + 2).padStart(2, '0')}`;
    if (each === null) return [];
    if (typeof each === 'string' && /^[a-z]/.test(each)) {
      return [{ day, state: each as NonNullable<Line['state']> }];
    }
    return [{ day, read: String(each), ...more }];
  });

/** A log of words: so many days of each. */
export const kinds = (counts: Readonly<Record<string, number>>): Notebook =>
  notebookOf(
    {
      Sky: Object.entries(counts)
        .flatMap(([word, count]) => Array.from({ length: count }, () => word))
        .map((word, index) => ({ day: `2026-03-${String(index + 2).padStart(2, '0')}`, word })),
    },
    { quantity: 'daily-kind', unit: 'count', mark: '1', kinds: Object.keys(counts) },
  );

export const ofTemplate = (facts: LessonFacts, id: string): readonly AskedQuestion[] =>
  questionsOf(facts).filter(({ template }) => template === id);

export { notebookOf, specimenId };
