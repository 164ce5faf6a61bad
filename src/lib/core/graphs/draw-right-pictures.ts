import { blankDrawing } from './blank-drawing';
import type { DrawRightOptions } from './draw-right';
import type { Drawing, DrawnSymbol, SymbolName } from './drawing';
import { kindPlaces, kindSquaresAcross } from './kind-places';
import { inReadingOrder } from './mirrored-across';
import type { RightGraph } from './right-graph';
import { keyText, titleOf } from './written-on-graph';

/** A right picture graph. Not part of the public door. */
export const drawRightPictures = (right: RightGraph, options: DrawRightOptions): Drawing => {
  const { table } = right;
  if (table.form !== 'counts') throw new Error(`No pictures of ${table.form}`);
  const value = options.keyValue ?? right.keyValue ?? 1;
  const symbol = options.symbol ?? 'circle';
  const places = kindPlaces(table.rows);
  const symbols = table.rows.flatMap(({ count }, index) =>
    picturesOf(count, value, symbol, places[index]?.at as number),
  );
  const longest = Math.max(...symbols.map(({ at }) => at + 0.5));
  return inReadingOrder({
    ...blankDrawing('picture-graph', options.level ?? 'empty-paper', options.upright ?? false, {
      up: longest + 1,
      across: kindSquaresAcross(table.rows.length),
    }),
    ...{ title: titleOf(table), places, symbols },
    key: { value, symbol, text: keyText(table, value) },
  });
};

/** Whole pictures, then a half: a row begins at the line and has no gaps. */
const picturesOf = (
  count: number,
  value: number,
  symbol: SymbolName,
  row: number,
): readonly DrawnSymbol[] => {
  const whole = Math.floor(count / value);
  const rest = count - whole * value;
  if (rest !== 0 && rest * 2 !== value) throw new RangeError(`No half picture of ${rest}`);
  return Array.from({ length: rest === 0 ? whole : whole + 1 }, (_, index) => ({
    ...{ row, at: index + 0.5, size: 1, symbol },
    part: index < whole ? 'whole' : 'half',
  }));
};
