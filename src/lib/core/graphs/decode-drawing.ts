import * as v from 'valibot';
import { failed, ok, type Result } from '#core/base';
import { drawingLevels, symbolNames, type Drawing } from './drawing';
import { graphKinds } from './graph-table';

/**
 * Looks at unknown data (a version kept in the journal, a file, another device) and says what
 * drawing it is. Joins must name points that are there. Parts a later program added are left out;
 * anything missing, of another shape, or past the limits of a sheet of paper is an error that names
 * the part, so that the version can be passed over kindly and an older one shown.
 * @example
 * decodeDrawing({ kind: 'pie-chart' }).error // => { kind: 'not-a-drawing', part: 'kind' }
 * decodeDrawing(emptyDrawing('bar-graph', { columns: 8, rows: 6 })).ok // => true
 */
export function decodeDrawing(data: unknown): Result<Drawing, DrawingError> {
  const read = v.safeParse(drawingSchema, data);
  if (!read.success) return failed(notADrawing(v.getDotPath(read.issues[0]) ?? ''));
  const { joins, points } = read.output;
  const isLoose = joins.some(({ from, to }) => from >= points.length || to >= points.length);
  return isLoose ? failed(notADrawing('joins')) : ok(read.output);
}

/** Which part of the data is no part of a drawing; empty for the whole. */
export interface DrawingError {
  readonly kind: 'not-a-drawing';
  readonly part: string;
}

/** As much as a sheet of paper and a patient child can hold; more is damage or mischief. */
const mostSquares = 400;
const mostMarks = 2000;
const mostLetters = 300;

const notADrawing = (part: string): DrawingError => ({ kind: 'not-a-drawing', part });

const place = v.pipe(v.number(), v.minValue(-mostSquares), v.maxValue(mostSquares));
const size = v.pipe(v.number(), v.minValue(0), v.maxValue(mostSquares));
const squares = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(mostSquares));
const text = v.pipe(v.string(), v.maxLength(mostLetters));
const index = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(mostMarks));
const list = <Item extends v.GenericSchema>(item: Item) =>
  v.pipe(v.array(item), v.maxLength(mostMarks));

const labelled = list(v.object({ at: place, text }));
const side = v.object({ label: text, ticks: labelled });
const symbol = v.picklist(symbolNames);

const drawingSchema = v.object({
  kind: v.picklist(graphKinds),
  level: v.picklist(drawingLevels),
  paper: v.object({ columns: squares, rows: squares }),
  upright: v.boolean(),
  title: text,
  key: v.nullable(
    v.object({
      value: v.nullable(v.pipe(v.number(), v.minValue(0), v.maxValue(1e6))),
      symbol: v.nullable(symbol),
      text,
    }),
  ),
  seriesKey: list(v.object({ series: index, text })),
  side,
  bottom: side,
  places: labelled,
  symbols: list(
    v.object({ row: place, at: place, size, symbol, part: v.picklist(['whole', 'half']) }),
  ),
  bars: list(v.object({ at: place, width: size, from: place, to: place })),
  crosses: list(
    v.object({ at: place, height: place, size, look: v.picklist(['cross', 'ring', 'box']) }),
  ),
  points: list(v.object({ x: place, y: place, series: index })),
  joins: list(v.object({ from: index, to: index, line: v.picklist(['solid', 'dashed']) })),
  strokes: list(v.object({ path: list(v.tuple([place, place])) })),
});
