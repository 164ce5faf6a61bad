import type { Notebook, Reading } from '#core/journal';
import { answersSinceChange } from '#core/series';

/**
 * Whether a doubted reading still waits to be looked at, as `openDoubts` says. Finding the doubts of
 * a long log takes a while: the page finds them once, and sorts them with this.
 */
export const isWaiting = (notebook: Pick<Notebook, 'doubtAnswers'>, reading: Reading): boolean =>
  !answersSinceChange(notebook, reading).some(({ answer }) => answer === 'read-so');
