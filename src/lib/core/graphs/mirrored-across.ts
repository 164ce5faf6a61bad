import { acrossOf } from './board-slots';
import type { Drawing } from './drawing';

/**
 * A drawing with what stands first put last and what stands last put first, across the paper:
 * names with their bars or rows of pictures. Positions climb from the bottom of the paper, but
 * rows that lie are read from the top, as the table beside them is. Marks keep their order in the
 * lists, so that an index means the same mark. Not part of the public door.
 */
export const mirroredAcross = (drawing: Drawing): Drawing => {
  const across = acrossOf(drawing);
  return {
    ...drawing,
    places: drawing.places.map((place) => ({ ...place, at: across - place.at })),
    bars: drawing.bars.map((bar) => ({ ...bar, at: across - bar.at })),
    symbols: drawing.symbols.map((symbol) => ({ ...symbol, row: across - symbol.row })),
  };
};

/** A drawing whose rows count in the order in which they are read. Not part of the public door. */
export const inReadingOrder = (drawing: Drawing): Drawing =>
  drawing.upright ? drawing : mirroredAcross(drawing);
