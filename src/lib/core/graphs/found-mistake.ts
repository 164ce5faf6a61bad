/** The numbered mistakes of the four graphs. */
export type PictureMistakeId =
  'P1' | 'P2' | 'P3' | 'P4' | 'P5' | 'P6' | 'P7' | 'P8' | 'P9' | 'P10' | 'P11' | 'P12' | 'P13';
export type BarMistakeId =
  | 'B1'
  | 'B2'
  | 'B3'
  | 'B4'
  | 'B5'
  | 'B6'
  | 'B7'
  | 'B8'
  | 'B9'
  | 'B10'
  | 'B11'
  | 'B12'
  | 'B13'
  | 'B14'
  | 'B15'
  | 'B16';
export type PlotMistakeId =
  | 'L1'
  | 'L2'
  | 'L3'
  | 'L4'
  | 'L5'
  | 'L6'
  | 'L7'
  | 'L8'
  | 'L9'
  | 'L10'
  | 'L11'
  | 'L12'
  | 'L13'
  | 'L14'
  | 'L15';
export type LineMistakeId =
  | 'T1'
  | 'T2'
  | 'T3'
  | 'T4'
  | 'T5'
  | 'T6'
  | 'T7'
  | 'T8'
  | 'T9'
  | 'T10'
  | 'T11'
  | 'T12'
  | 'T13'
  | 'T14';
export type MistakeId = PictureMistakeId | BarMistakeId | PlotMistakeId | LineMistakeId;

/** Where on the paper to look: never what the right number would be. */
export type LookAt =
  | { readonly part: 'title' | 'key' | 'side-label' | 'bottom-label' | 'whole' }
  | { readonly part: 'side-ticks' | 'bottom-ticks' | 'places'; readonly indexes: readonly number[] }
  | {
      readonly part: 'symbols' | 'bars' | 'crosses' | 'points' | 'joins' | 'strokes';
      readonly indexes: readonly number[];
    };

/** One thing to look at again. */
export interface FoundMistake {
  readonly id: MistakeId;
  readonly lookAt: LookAt;
  /** A matter of taste that a teacher mentions but does not insist on. */
  readonly isSoft: boolean;
}

/** What is right already, said first: each is one thing a teacher would praise. */
export type RightPart =
  | 'title'
  | 'key'
  | 'side-label'
  | 'bottom-label'
  | 'scale-from-zero'
  | 'even-scale'
  | 'every-place'
  | 'same-size'
  | 'stand-on-base'
  | 'every-value'
  | 'one-mark-each'
  | 'every-day'
  | 'joined-in-order'
  | 'gaps-shown'
  | 'unit';

/** What a kind look at a drawing says. */
export interface Look {
  readonly right: readonly RightPart[];
  /** In the order a teacher would raise them: one at a time. */
  readonly mistakes: readonly FoundMistake[];
}
