import type { DrawnSymbol } from './drawing';
import { picturesIn, type PictureRow } from './picture-rows';
import { middleOf, spreadOf } from './spread';

/** How the pictures lie, as indexes of pictures to look at; empty where nothing is the matter. */
export interface PictureLayout {
  /** Pictures of another size than most: P3. */
  readonly sizes: readonly number[];
  /** Rows whose lengths mislead, since their gaps differ: P4. */
  readonly gaps: readonly number[];
  /** First pictures of rows that begin elsewhere than most: P5. */
  readonly starts: readonly number[];
}

/**
 * Whether rows of pictures can be compared by length: sizes that differ by more than a quarter;
 * gaps that differ by more than 30 % and make a longer row of fewer pictures, or unlike rows of as
 * many; and beginnings more than half a cell apart. (The limits are common practice, no source.)
 * Not part of the public door.
 */
export const pictureLayout = (
  rows: readonly PictureRow[],
  symbols: readonly DrawnSymbol[],
): PictureLayout => {
  const sizes = symbols.map(({ size }) => size);
  const usual = middleOf(sizes);
  const lines = rows.filter((row) => row.symbols.length > 0);
  const gaps = lines.flatMap((row) =>
    row.symbols
      .slice(1)
      .map((index, order) => symbols[index]!.at - symbols[row.symbols[order]!]!.at),
  );
  const cell = gaps.length > 0 ? middleOf(gaps) : usual;
  const starts = lines.map((row) => symbols[row.symbols[0]!]!.at);
  const start = middleOf(starts);
  const isApart = (one: number, other: number): boolean => Math.abs(one - other) > cell / 2 + 1e-9;
  const isScattered = isApart(Math.max(...starts, start), Math.min(...starts, start));
  const apart = lines.filter((_, index) => isApart(starts[index]!, start));
  const late = apart.length > 0 ? apart : lines;
  return {
    sizes:
      spreadOf(sizes) > 0.25 + 1e-9
        ? symbols.flatMap(({ size }, index) => (Math.abs(size - usual) > usual / 10 ? [index] : []))
        : [],
    gaps: spreadOf(gaps) > 0.3 + 1e-9 ? misleading(lines, symbols, cell) : [],
    starts: isScattered ? late.map((row) => row.symbols[0]!) : [],
  };
};

/** Pictures of rows that look longer, or as long, than rows of more pictures. */
const misleading = (
  lines: readonly PictureRow[],
  symbols: readonly DrawnSymbol[],
  cell: number,
): readonly number[] => {
  const lengthOf = (row: PictureRow): number => {
    const last = symbols[row.symbols.at(-1)!]!;
    return last.at - symbols[row.symbols[0]!]!.at + (last.part === 'half' ? cell / 2 : cell);
  };
  const misleads = (one: PictureRow, other: PictureRow): boolean => {
    const more = picturesIn(other, symbols) - picturesIn(one, symbols);
    const longer = lengthOf(one) - lengthOf(other);
    return more > 0 ? longer >= -1e-9 : more === 0 && longer > cell / 2;
  };
  return lines
    .filter((one) => lines.some((other) => misleads(one, other) || misleads(other, one)))
    .flatMap((row) => row.symbols);
};
