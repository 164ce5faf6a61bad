import type { Unit } from '#core/measure';
import type { GraphKind, GraphTable } from './graph-table';
import type { TooTall, TooWide } from './scale-for';

/** Why a table makes no right graph of a kind. */
export type NoGraph =
  | {
      readonly kind: 'wrong-table-for-kind';
      readonly graph: GraphKind;
      readonly form: GraphTable['form'];
    }
  | { readonly kind: 'too-few'; readonly have: number; readonly need: number }
  | { readonly kind: 'too-many-kinds'; readonly have: number; readonly most: number }
  | { readonly kind: 'too-many-series'; readonly have: number; readonly most: number }
  /** One pile of a line plot higher than the paper. */
  | { readonly kind: 'too-many-marks'; readonly have: number; readonly most: number }
  /** Not one number, or no kind that ever came. */
  | { readonly kind: 'no-numbers' }
  | { readonly kind: 'units-mixed'; readonly units: readonly Unit[] }
  /** An amount less than nothing, such as a plant that drooped: no graph of these stages. */
  | { readonly kind: 'below-zero' }
  /** No key of 1, 2, 5 or 10 shows the counts in whole and half pictures. */
  | { readonly kind: 'no-key-fits' }
  | TooTall
  | TooWide;
