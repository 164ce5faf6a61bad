import type { Drawing } from './drawing';

/** What a child is busy with on the board: one thing at a time. */
export type DrawingStep = 'names' | 'numbers' | 'label' | 'key' | 'marks' | 'joins' | 'title';

/**
 * The steps of a drawing, in the order a teacher would go through them. What the paper has on it
 * already needs no step.
 * @example
 * drawingSteps({ kind: 'bar-graph', level: 'frame-given' }, 1) // => ['marks', 'title']
 * drawingSteps({ kind: 'line-graph', level: 'empty-paper' }, 2) // => ['names', 'numbers', 'label', 'key', 'marks', 'joins', 'title']
 */
export function drawingSteps(
  { kind, level }: Pick<Drawing, 'kind' | 'level'>,
  seriesCount: number,
): readonly DrawingStep[] {
  const needed: Readonly<Record<DrawingStep, boolean>> = {
    names: level !== 'frame-given' && kind !== 'line-plot',
    numbers: level === 'empty-paper' && kind !== 'picture-graph',
    label: level !== 'frame-given' && kind !== 'picture-graph',
    key: kind === 'picture-graph' || seriesCount > 1,
    marks: true,
    joins: kind === 'line-graph',
    title: true,
  };
  return everyStep.filter((step) => needed[step]);
}

/**
 * Whether something is there already for a step; not whether it is right.
 * @example
 * isStepBegun(emptyDrawing('bar-graph', { columns: 4, rows: 6 }), 'title') // => false
 */
export function isStepBegun(drawing: Drawing, step: DrawingStep): boolean {
  const { side, bottom, symbols, bars, crosses, points } = drawing;
  switch (step) {
    case 'names':
      return drawing.places.length > 0;
    case 'numbers':
      return side.ticks.length + bottom.ticks.length > 0;
    case 'label':
      return (side.label + bottom.label).trim() !== '';
    case 'key':
      return drawing.seriesKey.length > 0 || (drawing.key?.value ?? null) !== null;
    case 'marks':
      return symbols.length + bars.length + crosses.length + points.length > 0;
    case 'joins':
      return drawing.joins.length > 0;
    case 'title':
      return drawing.title.trim() !== '';
  }
}

const everyStep: readonly DrawingStep[] = [
  ...(['names', 'numbers', 'label', 'key', 'marks', 'joins', 'title'] as const),
];
