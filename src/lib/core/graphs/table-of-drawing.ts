import { failed, ok, type Result } from '#core/base';
import type { CivilDay } from '#core/calendar';
import type { DrawingRecord, Notebook } from '#core/journal';
import { sortedOtherwise, tallyTable, type ChildTally, type SortedOtherwise } from './child-tally';
import { decodeTableChoice, type ChoiceError } from './decode-table-choice';
import type { GraphTable } from './graph-table';
import { keptTally } from './kept-tally';
import { sortCards, type SortCard } from './sort-cards';
import { tallyToSort } from './sorting-steps';
import type { TableChoice } from './table-choice';
import { tableOf } from './table-of';

/** What a drawing is made from. */
export interface TableOfDrawing {
  readonly choice: TableChoice;
  /** The table as the log has it now. */
  readonly inLog: GraphTable;
  /** The table that is drawn: the child's own tally where one was made, else the log's. */
  readonly table: GraphTable;
  /** What is still to be sorted before anything is drawn; null when nothing is. */
  readonly sorting: { readonly cards: readonly SortCard[]; readonly tally: ChildTally } | null;
  /** The days the tally has elsewhere than the log; none where the log's table is drawn. */
  readonly otherwise: readonly SortedOtherwise[];
  /** Whether a tally was kept that cannot be read here, so that the log's table stands instead. */
  readonly isTallyLost: boolean;
}

/**
 * The table of a drawing, out of the notebook as it is now and the tally that was kept with it.
 *
 * Errors: `not-a-choice` where the record does not say which table it was begun with; `no-table`
 * where the notebook has none of its logs.
 * @param today the day it is where the family is
 * @example
 * tableOfDrawing({ choice: {}, versions: [] }, foldEntries([]), '2026-03-10') // => { ok: false, error: { kind: 'not-a-choice', part: 'source' } }
 */
export function tableOfDrawing(
  { choice, versions }: Pick<DrawingRecord, 'choice' | 'versions'>,
  notebook: Notebook,
  today: CivilDay,
): Result<TableOfDrawing, ChoiceError | { readonly kind: 'no-table' }> {
  const chosen = decodeTableChoice(choice);
  if (!chosen.ok) return chosen;
  const inLog = tableOf(chosen.value, notebook, today);
  if (!inLog) return failed({ kind: 'no-table' });
  const tally = keptTally(versions);
  const fromLog: TableOfDrawing = {
    ...{ choice: chosen.value, inLog, table: inLog, sorting: null, otherwise: [] },
    isTallyLost: !tally.ok,
  };
  if (!tally.ok || !tally.value || tally.value.use === 'log' || inLog.form !== 'counts') {
    return ok(fromLog);
  }
  const cards = sortCards(chosen.value, inLog, notebook, today);
  if (tally.value.use === 'mine') {
    const otherwise = sortedOtherwise(tally.value, cards);
    return ok({ ...fromLog, table: tallyTable(tally.value, inLog.counted), otherwise });
  }
  const kinds = inLog.rows.map(({ label }) => label);
  const sorting = { cards, tally: tallyToSort(cards, kinds, tally.value) };
  return ok(cards.length > 0 ? { ...fromLog, sorting } : fromLog);
}
