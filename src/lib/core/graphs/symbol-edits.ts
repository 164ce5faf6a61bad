import type { Drawing, SymbolName } from './drawing';

/**
 * Puts a picture into a square of a row, if none is there yet.
 * @example
 * withSymbol(emptyDrawing('picture-graph', { columns: 8, rows: 4 }), { row: 1, at: 0.5, symbol: 'sun' }).symbols // => [{ row: 1, at: 0.5, size: 1, symbol: 'sun', part: 'whole' }]
 */
export const withSymbol = (
  drawing: Drawing,
  { row, at, symbol, size = symbolSize }: PlacedSymbol,
): Drawing => {
  if (drawing.symbols.some((each) => each.row === row && each.at === at)) return drawing;
  return { ...drawing, symbols: [...drawing.symbols, { row, at, size, symbol, part: 'whole' }] };
};

/**
 * Puts a picture after the last one of a row, if the paper has room.
 * @example
 * withNextSymbol(emptyDrawing('picture-graph', { columns: 8, rows: 4 }), { row: 1, symbol: 'sun' }).symbols.map(({ at }) => at) // => [0.5]
 */
export const withNextSymbol = (drawing: Drawing, placed: Omit<PlacedSymbol, 'at'>): Drawing => {
  const at = Math.max(-0.5, ...inRow(drawing, placed.row).map((each) => each.at)) + 1;
  const { columns, rows } = drawing.paper;
  return at > (drawing.upright ? rows : columns) ? drawing : withSymbol(drawing, { ...placed, at });
};

/**
 * Takes the last picture of a row away.
 * @example
 * withoutLastSymbol(withNextSymbol(emptyDrawing('picture-graph', { columns: 8, rows: 4 }), { row: 1, symbol: 'sun' }), 1).symbols // => []
 */
export const withoutLastSymbol = (drawing: Drawing, row: number): Drawing => {
  const last = lastInRow(drawing, row);
  return { ...drawing, symbols: drawing.symbols.filter((each) => each !== last) };
};

/**
 * Cuts the last picture of a row in half, or makes it whole again.
 * @example
 * withLastHalved(withNextSymbol(emptyDrawing('picture-graph', { columns: 8, rows: 4 }), { row: 1, symbol: 'sun' }), 1).symbols.map(({ part }) => part) // => ['half']
 */
export const withLastHalved = (drawing: Drawing, row: number): Drawing => {
  const last = lastInRow(drawing, row);
  const symbols = drawing.symbols.map((each) =>
    each === last ? ({ ...each, part: each.part === 'half' ? 'whole' : 'half' } as const) : each,
  );
  return { ...drawing, symbols };
};

/**
 * Changes every picture into another one, and the key with them.
 * @example
 * withSymbolName(withNextSymbol(emptyDrawing('picture-graph', { columns: 8, rows: 4 }), { row: 1, symbol: 'sun' }), 'star').symbols.map(({ symbol }) => symbol) // => ['star']
 */
export const withSymbolName = (drawing: Drawing, symbol: SymbolName): Drawing => ({
  ...drawing,
  symbols: drawing.symbols.map((each) => ({ ...each, symbol })),
  key: { value: null, text: '', ...drawing.key, symbol },
});

interface PlacedSymbol {
  readonly row: number;
  readonly at: number;
  readonly symbol: SymbolName;
  readonly size?: number;
}

const symbolSize = 1;

const inRow = ({ symbols }: Drawing, row: number) => symbols.filter((each) => each.row === row);

const lastInRow = (drawing: Drawing, row: number) => {
  const own = inRow(drawing, row);
  return own.reduce((last, each) => (each.at > last.at ? each : last), own[0]!);
};
