import type { PictureFrame } from '#ui/paper';
import type { TapPlace } from './tap-places';

/** Where a place lies over a drawing, in shares of its picture. */
export interface PlaceBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Each place as wide as its column and as long as the picture, its name with it. */
export const placeBoxes = (
  places: readonly Pick<TapPlace, 'at' | 'width'>[],
  upright: boolean,
  { xOf, yOf, widthMm, heightMm }: PictureFrame,
): readonly PlaceBox[] =>
  places.map(({ at, width }) => {
    if (upright) {
      const left = xOf(at - width / 2) / widthMm;
      return { left, top: 0, width: xOf(at + width / 2) / widthMm - left, height: 1 };
    }
    const top = yOf(at + width / 2) / heightMm;
    return { left: 0, top, width: 1, height: yOf(at - width / 2) / heightMm - top };
  });

/** The place nearest to a touch: a finger is wider than a narrow column. */
export function nearestBox(
  boxes: readonly PlaceBox[],
  touch: { readonly x: number } | { readonly y: number },
): number {
  const away = boxes.map(({ left, top, width, height }) =>
    'x' in touch ? Math.abs(left + width / 2 - touch.x) : Math.abs(top + height / 2 - touch.y),
  );
  return away.indexOf(Math.min(...away));
}
