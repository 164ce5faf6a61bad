import type { Notebook } from '#core/journal';
import type { AskedQuestion } from '#core/questions';
import { answerText, questionText } from '#ui/ladder-words';
import { daily, kinds, notebookOf, type Asking } from './facts-of-lines';

/** What is asked and answered, worked out by hand from the few numbers of each log. */
export const said = (questions: readonly AskedQuestion[]): readonly string[] =>
  questions.map((question) => `${questionText(question)} ${answerText(question.answer)}`);

export const bean = (
  written: Parameters<typeof daily>[0],
  plan: Parameters<typeof notebookOf>[1] = {},
): Notebook => notebookOf({ Bean: daily(written) }, plan);
export const bars = { source: 'day-values', graph: 'bar-graph' } as const satisfies Asking;
export const kindBars = { source: 'kind-days', graph: 'bar-graph' } as const satisfies Asking;
export const kindPictures = {
  source: 'kind-days',
  graph: 'picture-graph',
} as const satisfies Asking;
export const rain = (written: Parameters<typeof daily>[0]) =>
  notebookOf({ Gauge: daily(written) }, { quantity: 'rain', unit: 'mm', mark: '1 mm' });
export const rainBars = { ...bars, told: ['mm', '1 mm'] } as const satisfies Asking;
export const rainPlot = {
  ...{ source: 'rain-amounts', graph: 'line-plot', told: ['mm', '1 mm'] },
} as const satisfies Asking;
export const shadow = notebookOf(
  {
    Stick: [
      { day: '2026-03-02', time: '09:00', read: '60' },
      { day: '2026-03-02', time: '12:00', read: '25' },
      { day: '2026-03-02', time: '15:00', read: '48' },
    ],
  },
  { quantity: 'shadow' },
);
export const shadowBars = { source: 'hour-values', graph: 'bar-graph', stage: 'grade-3' } as const;
export const skies = kinds({ sun: 7, cloud: 3, rain: 2 });
export const piles = rain([2, 3, 2, 6, 3, 5, 2, 6]);
