import type { Drawing, DrawingLevel, GraphKind } from '#core/graphs';
import { graphNames } from '#ui/graph-words';
import type { NoPaper } from './paper-work';

/** The sheets that can be printed of one graph. */
export const sheetKinds = [
  'empty-paper',
  'scale-given',
  'frame-given',
  'own-drawing',
  'finished',
] as const;
export type SheetKind = (typeof sheetKinds)[number];

export const isSheetKind = (text: unknown): text is SheetKind =>
  sheetKinds.some((kind) => kind === text);

export const isLevel = (kind: SheetKind): kind is SheetKind & DrawingLevel =>
  kind !== 'own-drawing' && kind !== 'finished';

/** For the grown-up who prints. */
export const sheetWords: Readonly<Record<SheetKind, { name: string; help: string }>> = {
  'empty-paper': {
    name: 'Empty squares',
    help: 'Squares, two sides and lines to write on. The child makes the scale too.',
  },
  'scale-given': { name: 'With numbers', help: 'The numbers stand; the child writes the names.' },
  'frame-given': { name: 'With names and numbers', help: 'Only the marks and the title are left.' },
  'own-drawing': { name: 'The child’s drawing', help: 'As it was saved last.' },
  finished: { name: 'Finished, for you', help: 'One right way to draw it. Keep it for later.' },
};

/** What the child is to do with a sheet: one short sentence. */
export const sheetTask: Readonly<Record<GraphKind, string>> = {
  'picture-graph': 'Draw pictures in rows from the table.',
  'bar-graph': 'Draw bars from the table.',
  'line-plot': 'Draw one X for each measure.',
  'line-graph': 'Draw a point for each day. Then join them.',
};

export const squareWords = (squareMm: number): string =>
  squareMm === 10 ? 'One square is 1 cm wide.' : `One square is ${squareMm} mm wide.`;

export const checkWords = {
  ask: 'Is this sheet its true size? Lay a ruler on both bars.',
  mend: 'If they are not 10 cm and 4 in, print again at 100\u00a0%, not “fit to page”.',
} as const;

/** A drawing in one sentence, for who hears it. */
export const drawingWords = ({ kind, title, ...drawing }: Drawing): string => {
  const parts = [
    counted(drawing.bars.length, 'bar', 'bars'),
    counted(drawing.symbols.length, 'picture', 'pictures'),
    counted(drawing.crosses.length, 'mark', 'marks'),
    counted(drawing.points.length, 'point', 'points'),
    counted(drawing.joins.length, 'line', 'lines'),
  ].filter((part) => part !== '');
  const marks = parts.length === 0 ? 'nothing drawn yet' : parts.join(', ');
  return `${graphNames[kind]}${title === '' ? '' : ` “${title}”`}: ${marks}.`;
};

const counted = (count: number, one: string, many: string): string =>
  count === 0 ? '' : `${count} ${count === 1 ? one : many}`;

export const plainWords = {
  name: 'Squares to draw on',
  task: 'For any graph.',
} as const;

/** Why there is no sheet, and what can be done. */
export const noPaperWords = (error: NoPaper): string => {
  switch (error.kind) {
    case 'no-table':
      return 'The log of this graph is not in this notebook.';
    case 'too-few':
    case 'no-numbers':
      return 'There are too few numbers for this graph yet. Measure some more days first.';
    case 'units-mixed':
      return 'Some numbers are in another unit. Choose the table again, in one unit.';
    default:
      return 'This table does not fit this graph on one sheet. Choose fewer days or another graph.';
  }
};
