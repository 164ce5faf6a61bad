import type { DrawingStep } from './drawing-steps';
import type { LookAt } from './found-mistake';

/**
 * The step in which a part of the paper is drawn, so that what is to be looked at can be mended;
 * the marks, where the paper had that part from the beginning.
 * @example
 * stepToLookAt({ part: 'title' }, ['marks', 'title']) // => 'title'
 * stepToLookAt({ part: 'side-ticks', indexes: [0] }, ['marks', 'title']) // => 'marks'
 */
export const stepToLookAt = (lookAt: LookAt, steps: readonly DrawingStep[]): DrawingStep => {
  const step = stepByPart[lookAt.part];
  return steps.includes(step) ? step : 'marks';
};

const stepByPart: Readonly<Record<LookAt['part'], DrawingStep>> = {
  title: 'title',
  key: 'key',
  'side-label': 'label',
  'bottom-label': 'label',
  'side-ticks': 'numbers',
  'bottom-ticks': 'numbers',
  places: 'names',
  whole: 'marks',
  symbols: 'marks',
  bars: 'marks',
  crosses: 'marks',
  points: 'marks',
  joins: 'joins',
  strokes: 'joins',
};
