import { keyIsRight, type Drawing, type DrawnSymbol, type RightGraph } from '#core/graphs';
import { changed, without } from './right-drawings';
import type { Planter } from './planted-bar-mistakes';

const countsOf = ({ table }: RightGraph): readonly number[] =>
  table.form === 'counts' ? table.rows.map(({ count }) => count) : [];
const oneOf = <Item>(list: readonly Item[], pick: number): Item | undefined =>
  list[pick % list.length];
const inRow = (drawing: Drawing, row: number): readonly DrawnSymbol[] =>
  drawing.symbols.filter((symbol) => symbol.row === drawing.places[row]!.at);
const withRow = (drawing: Drawing, row: number, symbols: readonly DrawnSymbol[]): Drawing => ({
  ...drawing,
  symbols: [
    ...drawing.symbols.filter((symbol) => symbol.row !== drawing.places[row]!.at),
    ...symbols,
  ],
});
const wholes = (drawing: Drawing, row: number, count: number): readonly DrawnSymbol[] =>
  Array.from({ length: count }, (_, index) => ({
    ...{ row: drawing.places[row]!.at, at: index + 0.5, size: 1 },
    ...{ symbol: 'circle', part: 'whole' },
  }));
const rowsWith = (drawing: Drawing, fewest: number): readonly number[] =>
  drawing.places.flatMap((_, row) => (inRow(drawing, row).length >= fewest ? [row] : []));
const keyOf = (drawing: Drawing): number => drawing.key!.value!;

const noTitle: Planter = (_, drawing) => ({ ...drawing, title: '' });

const noKey: Planter = (_, drawing, pick) => ({
  ...drawing,
  key: pick % 2 === 0 ? null : { value: null, symbol: 'circle', text: 'our days' },
});

const bigPicture: Planter = (_, drawing, pick) => {
  const { length } = drawing.symbols;
  if (length < 2) return null;
  const size = pick % 2 === 0 ? 1.5 : 0.5;
  return { ...drawing, symbols: changed(drawing.symbols, pick % length, { size }) };
};

/** A row of fewer pictures, two at least, drawn out to the length of a row of more. */
const unevenGaps: Planter = (_, drawing, pick) => {
  const rows = drawing.places.map((__, row) => inRow(drawing, row));
  const pairs = rows.flatMap((short, row) =>
    rows.flatMap((long) =>
      short.length > 1 && long.length / short.length > 1.4 ? [{ row, long }] : [],
    ),
  );
  const pair = oneOf(pairs, pick);
  if (!pair) return null;
  const short = rows[pair.row]!;
  const gap = (pair.long.length - 0.5) / (short.length - 1);
  return withRow(
    drawing,
    pair.row,
    short.map((symbol, index) => ({ ...symbol, at: 0.5 + index * gap })),
  );
};

const startsElsewhere: Planter = (_, drawing, pick) => {
  const rows = rowsWith(drawing, 1);
  // A lone row starts where it starts.
  if (rows.length < 2) return null;
  const row = oneOf(rows, pick)!;
  const by = pick % 2 === 0 ? 1 : 0.6;
  return withRow(
    drawing,
    row,
    inRow(drawing, row).map((symbol) => ({ ...symbol, at: symbol.at + by })),
  );
};

/** Where only one kind came at all, one picture more may be all of P7 or P8 as well. */
const miscounted: Planter = (right, drawing, pick) => {
  if (keyOf(drawing) > 1 && countsOf(right).filter((count) => count > 0).length < 2) return null;
  const row = pick % drawing.places.length;
  const own = inRow(drawing, row);
  const isWhole = own.at(-1)?.part === 'whole';
  if (pick % 2 === 0 && isWhole) return withRow(drawing, row, own.slice(0, -1));
  if (own.length > 0 && !isWhole) return null;
  return withRow(drawing, row, wholes(drawing, row, own.length + 1));
};

const oneForEach: Planter = (right, drawing) => {
  if (keyOf(drawing) === 1) return null;
  return countsOf(right).reduce<Drawing>(
    (each, count, row) => withRow(each, row, wholes(each, row, count)),
    drawing,
  );
};

const multiplied: Planter = (right, drawing) => {
  const value = keyOf(drawing);
  if (value === 1) return null;
  return countsOf(right).reduce<Drawing>(
    (each, count, row) => withRow(each, row, wholes(each, row, count * value)),
    drawing,
  );
};

/** Where every kind came once, two to a picture, whole pictures are one for each: P7. */
const halfAsWhole: Planter = (right, drawing, pick) => {
  if (countsOf(right).every((count) => count === 0 || (count === 1 && keyOf(drawing) === 2))) {
    return null;
  }
  const halves = drawing.symbols.flatMap(({ part }, index) => (part === 'half' ? [index] : []));
  const index = oneOf(halves, pick);
  if (index === undefined) return null;
  if (pick % 3 === 0) {
    const symbols = drawing.symbols.map((symbol) => ({ ...symbol, part: 'whole' as const }));
    return { ...drawing, symbols };
  }
  const isAlone =
    drawing.symbols.filter(({ row }) => row === drawing.symbols[index]!.row).length < 2;
  // Without its half the row of one half is empty, and so just not drawn yet.
  return pick % 3 === 1 && !isAlone
    ? { ...drawing, symbols: without(drawing.symbols, index) }
    : { ...drawing, symbols: changed(drawing.symbols, index, { part: 'whole' }) };
};

const swapped: Planter = (right, drawing, pick) => {
  const counts = countsOf(right);
  const pairs = counts.flatMap((one, index) =>
    counts.flatMap((other, later) =>
      later > index && one !== other ? [[index, later] as const] : [],
    ),
  );
  const [one, other] = oneOf(pairs, pick) ?? [];
  if (one === undefined || other === undefined) return null;
  const { places } = drawing;
  return {
    ...drawing,
    places: changed(changed(places, one, { text: places[other]!.text }), other, {
      text: places[one]!.text,
    }),
  };
};

const leftOut: Planter = (right, drawing, pick) => {
  const zeros = countsOf(right).flatMap((count, row) => (count === 0 ? [row] : []));
  const row = oneOf(
    pick % 2 === 0 && zeros.length > 0 ? zeros : drawing.places.map((_, at) => at),
    pick,
  )!;
  const emptied = pick % 3 === 0 ? drawing : withRow(drawing, row, []);
  return { ...emptied, places: without(drawing.places, row) };
};

const otherPicture: Planter = (_, drawing, pick) => {
  const row = oneOf(rowsWith(drawing, 1), pick);
  if (row === undefined) return null;
  return withRow(
    drawing,
    row,
    inRow(drawing, row).map((symbol) => ({ ...symbol, symbol: 'leaf' })),
  );
};

const days = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const heightsOfDays: Planter = (_, drawing, pick) => ({
  ...drawing,
  key: { ...drawing.key!, text: pick % 2 === 0 ? 'one leaf is 1 cm' : '' },
  places: drawing.places.map((place, index) => ({ ...place, text: days[index]! })),
});

/** Every numbered mistake of a picture graph, and how a child may make it. */
export const plantPictureMistake = {
  P1: noTitle,
  P2: noKey,
  P3: bigPicture,
  P4: unevenGaps,
  P5: startsElsewhere,
  P6: miscounted,
  P7: oneForEach,
  P8: multiplied,
  P9: halfAsWhole,
  P10: swapped,
  P11: leftOut,
  P12: otherPicture,
  P13: heightsOfDays,
} as const satisfies Record<string, Planter>;

/** The keys that can show every count of a table. */
export const keysFor = (right: RightGraph): readonly number[] =>
  [1, 2, 5, 10].filter((value) => keyIsRight(countsOf(right), value));
