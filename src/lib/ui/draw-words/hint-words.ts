import type { MistakeId } from '#core/graphs';
import { barHints } from './bar-hints';
import type { HintLadder } from './hint-ladder';
import { lineGraphHints } from './line-graph-hints';
import { linePlotHints } from './line-plot-hints';
import { pictureHints, pictureHintsByTally } from './picture-hints';

/** The three steps of help with a mistake of any graph. */
export const hintWords = (id: MistakeId): HintLadder => hintsById[id];

/** The same, where the child made its table by sorting: then a tally stands beside the paper. */
export const hintWordsByTally = (id: MistakeId): HintLadder =>
  pictureHintsByTally[id] ?? hintsById[id];

const hintsById: Readonly<Record<MistakeId, HintLadder>> = {
  ...pictureHints,
  ...barHints,
  ...linePlotHints,
  ...lineGraphHints,
};
