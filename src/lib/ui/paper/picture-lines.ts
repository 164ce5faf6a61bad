import type { Drawing } from '#core/graphs';
import { seriesCount } from './picture-series';

/** Which lines stand over and under the squares of a drawing, and what is written on them. */
export interface PictureLines {
  readonly title: string;
  /** What the numbers are of, over the squares or under them; null where no number stands. */
  readonly numbers: { readonly text: string; readonly place: 'over' | 'under' } | null;
  /** What is along the bottom, where that is another thing than the numbers. */
  readonly bottom: string | null;
  readonly hasKey: boolean;
}

export const pictureLines = (drawing: Drawing, toWrite: boolean): PictureLines => ({
  title: drawing.title,
  numbers: numbersLine(drawing),
  // Where the names of the days stand, nobody needs to be told that they are days.
  bottom:
    drawing.kind === 'line-graph' && drawing.places.length === 0 ? drawing.bottom.label : null,
  hasKey: drawing.key !== null || drawing.seriesKey.length > 0 || (toWrite && asksForKey(drawing)),
});

/** How much of the sheet those lines take, in millimetres: as tall as the style of each makes it. */
export const linesMm = (drawing: Drawing, toWrite: boolean): number => {
  const { title, numbers, bottom, hasKey } = pictureLines(drawing, toWrite);
  const keyed = [
    ...(drawing.key ? [`stands for ${drawing.key.text}`] : []),
    ...drawing.seriesKey.map(({ text }) => text),
  ].reduce((sum, text) => sum + text.length * 2.4 + 13, 20);
  return (
    (title === '' ? (toWrite ? 12 : 0) : 4 + 8 * linesOf(title, 3.2)) +
    (numbers ? lineMm(numbers.text, toWrite) : 0) +
    (bottom === null ? 0 : lineMm(bottom, toWrite)) +
    (hasKey ? 8 + 7 * Math.ceil(keyed / narrowMm) : 0)
  );
};

/** Whether a reader would ask what a mark stands for, or whose it is. */
const asksForKey = (drawing: Drawing): boolean =>
  drawing.kind === 'picture-graph' || seriesCount(drawing) > 1;

const numbersLine = ({ kind, upright, side, bottom }: Drawing): PictureLines['numbers'] => {
  if (kind === 'picture-graph') return null;
  if (kind === 'line-plot') return { text: bottom.label, place: 'under' };
  return { text: side.label, place: upright ? 'over' : 'under' };
};

const lineMm = (text: string, toWrite: boolean): number =>
  text === '' ? (toWrite ? 9 : 0) : 2.5 + 6.5 * linesOf(text, 2.4);

/** Reckoned for a narrow picture, so that there is never too little room. */
const narrowMm = 100;
const linesOf = (text: string, letterMm: number): number =>
  Math.ceil((text.length * letterMm) / narrowMm);
