import {
  middleOfSquare,
  snapToPaper,
  squaresText,
  type Drawing,
  type DrawingLevel,
  type DrawingStep,
  type DrawnRow,
  type GraphKind,
} from '#core/graphs';
import { graphNames } from '#ui/graph-words';

/** What the board says. A child's sentence has ten words at most, and never calls anything wrong. */
export const graphWords: Readonly<Record<GraphKind, { name: string; use: string }>> = {
  'picture-graph': {
    name: graphNames['picture-graph'],
    use: 'Pictures in rows: how many of each?',
  },
  'bar-graph': { name: graphNames['bar-graph'], use: 'Bars side by side: which is most?' },
  'line-plot': { name: graphNames['line-plot'], use: 'Piles on a ruler: how often?' },
  'line-graph': {
    name: graphNames['line-graph'],
    use: 'A walk through the days: how did it change?',
  },
};

export const levelWords: Readonly<Record<DrawingLevel, { name: string; help: string }>> = {
  'frame-given': {
    name: 'The frame is given',
    help: 'Names and numbers stand already. The child draws the marks, the title and the key.',
  },
  'scale-given': {
    name: 'The numbers are given',
    help: 'The child writes the names and labels too.',
  },
  'empty-paper': { name: 'Empty paper', help: 'Squares alone. The child makes the scale too.' },
};

export const stepWords = (
  step: DrawingStep,
  kind: GraphKind,
  upright = true,
): { name: string; say: string } => {
  if (kind === 'bar-graph' && !upright && (step === 'marks' || step === 'numbers')) {
    return lyingBars[step];
  }
  if (step === 'marks') return marksWords[kind];
  if (step === 'key' && kind !== 'picture-graph') {
    return { name: 'Key', say: 'Write whose mark is whose.' };
  }
  if (step === 'label' && kind === 'line-plot') {
    return { name: 'Label', say: 'What do the numbers on the line mean?' };
  }
  if (step === 'numbers' && kind === 'line-plot') {
    return { name: 'Numbers', say: 'Make a number line along the bottom.' };
  }
  return otherSteps[step];
};

const marksWords: Readonly<Record<GraphKind, { name: string; say: string }>> = {
  'picture-graph': { name: 'Pictures', say: 'Tap the squares to put your pictures in rows.' },
  'bar-graph': { name: 'Bars', say: 'Tap a column where its bar should end.' },
  'line-plot': { name: 'Marks', say: 'Tap a number to put a mark above it.' },
  'line-graph': { name: 'Points', say: 'Find the day, climb up, and tap there.' },
};

const lyingBars = {
  marks: { name: 'Bars', say: 'Tap a row where its bar should end.' },
  numbers: { name: 'Numbers', say: 'Write the numbers along the bottom.' },
} as const;

const otherSteps: Readonly<Record<Exclude<DrawingStep, 'marks'>, { name: string; say: string }>> = {
  names: { name: 'Names', say: 'Write a name at each place.' },
  numbers: { name: 'Numbers', say: 'Write the numbers up the side.' },
  label: { name: 'Label', say: 'What do the numbers mean? Write it.' },
  key: { name: 'Key', say: 'Pick a picture. How many does one stand for?' },
  joins: { name: 'Lines', say: 'Join the points, one after the other.' },
  title: { name: 'Title', say: 'What should a visitor read first?' },
};

/** What one picture of the key stands for: "1 day", "2 days". */
export const keyText = (value: number, counted: string): string =>
  value === 1 && counted.endsWith('s') ? counted.slice(0, -1) : counted;

/** What is drawn in one column, as the board says it aloud and shows it beside the finger. */
export const drawnWords = ({ kind, upright }: Standing, row: DrawnRow): string => {
  if (row.marks === 0) return 'empty';
  if (kind === 'picture-graph') {
    const pictures = `${row.marks} ${row.marks === 1 ? 'picture' : 'pictures'}`;
    return row.halves > 0 ? `${pictures}, ${row.halves} of them a half` : pictures;
  }
  if (kind === 'line-plot') return `${row.marks} ${row.marks === 1 ? 'mark' : 'marks'}`;
  return lengthWords(row.squares ?? 0, upright);
};

/** What stands beside a finger that points so many squares along a column. */
export const besideWords = ({ kind, upright }: Standing, at: number, along: number): string =>
  kind === 'picture-graph'
    ? `square ${middleOfSquare(at, along) + 0.5}`
    : lengthWords(snapToPaper(at, along), upright);

/** How long a bar is, or how high a point: up where it stands, along where it lies. */
export const lengthWords = (squares: number, upright: boolean): string => {
  const counted = squares === 1 || squares === 0.5 ? 'square' : 'squares';
  return `${squaresText(squares)} ${counted} ${upright ? 'up' : 'along'}`;
};

/** Which graph it is, and whether its bars or rows stand or lie. */
export type Standing = Pick<Drawing, 'kind' | 'upright'>;

/** A column's name for who hears it. */
export const slotName = (name: string, index: number, { upright }: Standing): string => {
  const place = upright ? 'Column' : 'Row';
  return name.trim() === '' ? `${place} ${index + 1}` : name;
};

/** The whole drawing in a sentence. */
export const drawingSentence = (
  standing: Standing,
  title: string,
  rows: readonly DrawnRow[],
): string => {
  const drawn = rows
    .map((row, index) => ({ row, name: slotName(row.name, index, standing) }))
    .filter(({ row }) => row.marks > 0)
    .map(({ row, name }) => `${name}: ${drawnWords(standing, row)}`);
  const head = `${graphNames[standing.kind]}${title === '' ? '' : ` “${title}”`}. `;
  return head + (drawn.length === 0 ? 'Nothing is drawn yet.' : `${drawn.join('; ')}.`);
};
