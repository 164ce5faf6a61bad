import type { GraphKind, TableChoice } from '#core/graphs';
import type { LessonId, LessonMinutes, LessonRecord, Stage, Stamp } from '#core/journal';
import { lessonOf, type Lesson, type PurposeId } from '#core/lessons';
import { inCm, sampleChoice, sampleNotebook } from '../../core/graphs/sample-logs';

const both = ['Window bean', 'Shelf bean'];
const bean = ['Window bean'];

type Taught = readonly [GraphKind, PurposeId, TableChoice];

/** Graphs that the made-up notebook is taught with, one of each kind and more. */
export const taught = {
  weather: [
    'picture-graph',
    'picture-graph-of-kinds',
    sampleChoice('weather-days', both, ['2026-03-02', '2026-03-30'], null, 3),
  ],
  growth: [
    'line-plot',
    'line-plot-of-amounts',
    sampleChoice('growth-amounts', bean, ['2026-03-11', '2026-03-30'], inCm),
  ],
  'two plants': [
    'bar-graph',
    'bar-graph-of-how-many-days',
    sampleChoice('specimen-readings', both, ['2026-03-11', '2026-03-24']),
  ],
  week: [
    'bar-graph',
    'value-bars',
    sampleChoice('day-values', bean, ['2026-03-11', '2026-03-17'], inCm),
  ],
  'two lines': [
    'line-graph',
    'line-graph-guided',
    sampleChoice('days-in-order', both, ['2026-03-11', '2026-03-30'], inCm),
  ],
} as const satisfies Readonly<Record<string, Taught>>;
export type TaughtName = keyof typeof taught;

/** A lesson of the made-up notebook, with what a grown-up changed. */
export const paperLesson = (
  name: TaughtName,
  {
    stage = 'grade-2' as Stage,
    minutes = 30 as LessonMinutes,
    seed = 7,
    changes = [] as LessonRecord['changes'],
  } = {},
): Lesson => {
  const [graph, purpose, choice] = taught[name];
  const lesson = lessonOf(sampleNotebook, {
    ...{ id: '00000000-0000-7000-8000-000000000001' as LessonId, graph, purpose, minutes, stage },
    ...{ investigation: choice.investigation, choice: { ...choice }, seed, changes },
    ...{ madeAt: '2026-05-01T14:00:00.000Z-00000' as Stamp, author: null, givenOn: [] },
  });
  if (!lesson.ok) throw new Error(`${name}: ${JSON.stringify(lesson.error)}`);
  return lesson.value;
};

export const taughtNames = Object.keys(taught) as readonly TaughtName[];
export const stagesOf = (name: TaughtName): readonly Stage[] =>
  name === 'growth' ? ['grade-2', 'grade-3'] : ['grade-1', 'grade-2', 'grade-3'];
