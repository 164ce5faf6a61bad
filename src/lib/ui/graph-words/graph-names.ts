import type { GraphKind } from '#core/graphs';

/** What a graph is called, to the child and to the grown-up. */
export const graphNames: Readonly<Record<GraphKind, string>> = {
  'picture-graph': 'Picture graph',
  'bar-graph': 'Bar graph',
  'line-plot': 'Line plot (X plot)',
  'line-graph': 'Line graph',
};

/** Whether text from a journal names a graph this notebook can draw. */
export const isGraphKind = (text: string): text is GraphKind => Object.hasOwn(graphNames, text);
