import type { GraphKind, TableChoice } from '#core/graphs';
import type { Stage } from '#core/journal';
import { lessonFactsOf, type LessonFacts } from '#core/questions';
import { inCm, inMm, sampleChoice, sampleNotebook, sampleToday } from '../graphs/sample-logs';

const factsOf = (graph: GraphKind, stage: Stage, choice: TableChoice): LessonFacts => {
  const facts = lessonFactsOf(sampleNotebook, choice, graph, stage, sampleToday);
  if (!facts.ok) throw new Error(JSON.stringify(facts.error));
  return facts.value;
};

/** Lessons of the made-up notebook, by the name of their golden file. */
export const sampleLessons: Readonly<Record<string, LessonFacts>> = {
  'weather-pictures-grade-2': factsOf(
    ...(['picture-graph', 'grade-2'] as const),
    sampleChoice('weather-days', ['Window bean', 'Shelf bean'], ['2026-03-02', '2026-03-30']),
  ),
  'two-beans-grade-3': factsOf(
    ...(['line-graph', 'grade-3'] as const),
    sampleChoice(
      'days-in-order',
      ['Window bean', 'Shelf bean'],
      ['2026-03-11', '2026-03-30'],
      inCm,
    ),
  ),
  'rain-amounts-grade-2': factsOf(
    ...(['line-plot', 'grade-2'] as const),
    sampleChoice('rain-amounts', ['Yard gauge'], ['2026-04-01', '2026-04-30'], inMm),
  ),
  'window-bean-bars-grade-2': factsOf(
    ...(['bar-graph', 'grade-2'] as const),
    sampleChoice('day-values', ['Window bean'], ['2026-03-11', '2026-03-21'], inCm),
  ),
  'shadow-grade-2': factsOf(
    ...(['line-graph', 'grade-2'] as const),
    sampleChoice('hours-in-order', ['Yard stick'], ['2026-04-24', '2026-04-24'], inCm),
  ),
};
