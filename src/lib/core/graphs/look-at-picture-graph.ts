import type { Drawing } from './drawing';
import type { FoundMistake, Look, LookAt, PictureMistakeId, RightPart } from './found-mistake';
import type { CountTable } from './graph-table';
import { areMeasuredPictures } from './measured-pictures';
import { pictureLayout } from './picture-layout';
import { rowsOfPictures } from './picture-rows';
import { pictureValues } from './picture-values';
import type { RightGraph } from './right-graph';

/**
 * Looks at a child's picture graph beside its table of counts.
 *
 * Mistakes come in the order in which mending one helps with the next: whether anything is counted
 * (P13); what a picture stands for, since every row is read by it (P12, P7, P8); how pictures lie,
 * so that rows can be counted and compared (P3, P5, P4); which row belongs to which name (P10);
 * single rows (P9, P6); and last what is not there yet, which may just not have been drawn so far:
 * the key (P2), the title (P1), pictures of a named row (P6) and names (P11). One cause is told
 * once, and the child's own key counts. Rows that fit nothing else are a P6. A key that cannot
 * show a count at all (7 things, 5 to a picture) is the nearest to P12: it does not work for
 * every row.
 * @example
 * lookAtPictureGraph({ kind: 'picture-graph', keyValue: 1, table: { form: 'counts', counted: 'days', rows: [{ label: 'sun', count: 2 }] }, titleWords: ['days'] }, { ...emptyDrawing('picture-graph', { columns: 3, rows: 3 }), title: 'Days of sun', key: { value: 1, symbol: 'sun', text: '1 day' }, places: [{ at: 1, text: 'sun' }], symbols: [{ row: 1, at: 0.5, size: 1, symbol: 'sun', part: 'whole' }] }).mistakes // => [{ id: 'P6', lookAt: { part: 'symbols', indexes: [0] }, isSoft: false }]
 */
export const lookAtPictureGraph = (right: RightGraph, drawing: Drawing): Look => {
  const { table } = right;
  const key = keyNumber(drawing);
  const hasTitle = drawing.title.trim() !== '';
  const notYet = [
    ...(key === null ? [mistake('P2', { part: 'key' })] : []),
    ...(hasTitle ? [] : [mistake('P1', { part: 'title' })]),
  ];
  const written: readonly (RightPart | false)[] = [hasTitle && 'title', key !== null && 'key'];
  if (table.form !== 'counts' || areMeasuredPictures(table, drawing)) {
    return lookOf(written, [mistake('P13', { part: 'whole' }), ...notYet]);
  }
  const found = lookAtRows(table, drawing, key, right.keyValue ?? 1);
  return lookOf([...written, ...found.right], [...found.mistakes, ...notYet, ...found.toCome]);
};

const lookOf = (
  parts: readonly (RightPart | false)[],
  mistakes: readonly FoundMistake[],
): Look => ({ right: parts.filter((part) => part !== false), mistakes });

const lookAtRows = (table: CountTable, drawing: Drawing, key: number | null, ourKey: number) => {
  const { symbols, places } = drawing;
  const found = rowsOfPictures(table, drawing);
  const { rows, straySymbols } = found;
  const values = pictureValues(found, symbols, key, ourKey);
  const layout = pictureLayout(rows, symbols);
  const isNamed = rows.every(({ place }) => place !== null);
  const symbolsOf = (list: readonly number[]) => list.flatMap((row) => rows[row]!.symbols);
  const placesOf = (list: readonly number[]) => list.flatMap((row) => rows[row]!.place ?? []);
  const byKey = [
    ...onSymbols('P12', otherSymbols(drawing)),
    ...(values.beyondKey.length > 0 ? [mistake('P12', { part: 'key' })] : []),
    ...onSymbols('P7', symbolsOf(values.oneForEach)),
    ...onSymbols('P8', symbolsOf(values.multiplied)),
  ];
  const single = [
    ...onPlaces('P10', placesOf(values.swapped)),
    ...onSymbols('P9', symbolsOf(values.byHalf)),
    ...values.off.flatMap((row) => onSymbols('P6', symbolsOf([row]))),
    ...(isNamed ? onSymbols('P6', straySymbols) : []),
  ];
  const nameless = rows.flatMap(({ place }, row) => (place === null ? [row] : []));
  const unnamed = symbolsOf(nameless);
  const missing: LookAt =
    unnamed.length > 0
      ? { part: 'symbols', indexes: unnamed }
      : { part: 'places', indexes: places.map((_, index) => index) };
  const toCome = [
    ...values.empty.flatMap((row) => onPlaces('P6', placesOf([row]))),
    ...(isNamed ? [] : [mistake('P11', missing)]),
  ];
  const mistakes = [
    ...byKey,
    ...onSymbols('P3', layout.sizes),
    ...onSymbols('P5', layout.starts),
    ...onSymbols('P4', layout.gaps),
    ...single,
  ];
  const lines = rows.filter((row) => row.symbols.length > 0).length;
  const right: readonly (RightPart | false)[] = [
    symbols.length > 1 && layout.sizes.length === 0 && 'same-size',
    lines > 1 && layout.starts.length === 0 && 'stand-on-base',
    isNamed && 'every-place',
    isNamed && [...byKey, ...single, ...toCome].length === 0 && 'every-value',
  ];
  return { mistakes, toCome, right };
};

const mistake = (id: PictureMistakeId, lookAt: LookAt): FoundMistake => ({
  ...{ id, lookAt, isSoft: false },
});

const onSymbols = (id: PictureMistakeId, indexes: readonly number[]): readonly FoundMistake[] =>
  indexes.length === 0 ? [] : [mistake(id, { part: 'symbols', indexes })];

const onPlaces = (id: PictureMistakeId, indexes: readonly number[]): readonly FoundMistake[] =>
  indexes.length === 0 ? [] : [mistake(id, { part: 'places', indexes })];

/** The number in the key; one that was only written among its words counts too. */
const keyNumber = ({ key }: Drawing): number | null => {
  if (key?.value) return key.value > 0 ? key.value : null;
  const written = Number(key?.text.match(/\d+/g)?.at(-1) ?? 0);
  return written > 0 ? written : null;
};

/** Pictures that the key does not show: others than its own, or than most. */
const otherSymbols = ({ symbols, key }: Drawing): readonly number[] => {
  const names = [...new Set(symbols.map(({ symbol }) => symbol))];
  const timesOf = (name: string) => symbols.filter(({ symbol }) => symbol === name).length;
  const usual = key?.symbol ?? names.sort((one, other) => timesOf(other) - timesOf(one))[0];
  return symbols.flatMap(({ symbol }, index) => (symbol === usual ? [] : [index]));
};
