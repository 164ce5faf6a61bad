import { isUnderstood, type JournalEntry } from './decode-entry';
import { mergeEntries } from './entry-order';
import type { Entry, EntryKind, EntryOf } from './entry-schema';
import type { FoldHandler } from './fold-handler';
import { foldHandlers } from './fold-handlers';
import { foldReading } from './fold-reading';
import { emptyFoldState, logOf, type FoldState } from './fold-state';
import type { EntryId } from './id';
import type { TakenBack } from './line';
import type { Notebook, RemovedInvestigation } from './notebook';

/**
 * Adds up a journal to the notebook it describes. The same set of entries gives the same
 * notebook, in whatever order and however often they are handed in (rules F1 to F9 in SPEC.md).
 *
 * @example
 * foldEntries([]).entryCount // => 0
 */
export function foldEntries(entries: readonly JournalEntry[]): Notebook {
  const inOrder = mergeEntries(entries);
  const understood = inOrder.filter(isUnderstood);
  const takenBackById = foldTakenBack(understood);
  const state = emptyFoldState();
  for (const entry of understood) apply(state, entry, takenBackById.get(entry.id) ?? null);
  return finish(state, inOrder, inOrder.length - understood.length);
}

/**
 * Which entries are taken back (F4). Read from the last entry to the first, so that a taking back
 * which was itself taken back has no effect.
 */
function foldTakenBack(entries: readonly Entry[]): ReadonlyMap<EntryId, TakenBack> {
  const takenBackById = new Map<EntryId, TakenBack>();
  for (let index = entries.length - 1; index >= 0; index -= 1) {
    const entry = entries[index]!;
    if (entry.kind !== 'entry-taken-back' || takenBackById.has(entry.id)) continue;
    const { id: by, at, author, why } = entry;
    takenBackById.set(entry.entry, { by, at, author, ...(why === undefined ? {} : { why }) });
  }
  return takenBackById;
}

function apply(state: FoldState, entry: Entry, takenBack: TakenBack | null): void {
  const handler = foldHandlers[entry.kind] as FoldHandler<EntryKind>;
  handler(state, entry as EntryOf<EntryKind>, takenBack);
}

function finish(
  state: FoldState,
  entries: readonly JournalEntry[],
  notUnderstoodCount: number,
): Notebook {
  for (const { entry, takenBack } of state.readingsTaken) {
    const corrections = state.correctionsByReading.get(entry.id) ?? [];
    logOf(state, entry.specimen).readings.push(foldReading(entry, corrections, takenBack));
  }
  for (const [id, drawing] of state.drawings) {
    const saved = state.drawingSavedById.get(id) ?? [];
    const versions = saved.map(({ at, paper, ticked }) => ({ at, paper, ticked }));
    const finishedAt = state.drawingFinishedById.get(id)?.at ?? null;
    state.drawings.set(id, { ...drawing, versions, finishedAt });
  }
  const removed: RemovedInvestigation[] = [];
  for (const [id, removals] of state.removalsByInvestigation) {
    const investigation = state.investigations.get(id);
    if (!investigation) continue;
    state.investigations.delete(id);
    const at = removals.at(-1)!.at;
    removed.push({ investigation, removals: removals.map((each) => each.id), at });
  }
  const { title, people, investigations, specimens, logBySpecimen, notes, drawings } = state;
  const lastStamp = entries.at(-1)?.at ?? null;
  const entryCount = entries.length;
  return {
    ...{ title, people, investigations, specimens, logBySpecimen, notes, drawings, removed },
    ...state.care,
    ...state.teaching,
    ...{ entryCount, notUnderstoodCount, lastStamp },
  };
}
