import { newId, nextStamp } from '#core/journal';
import type { AnyId, DeviceId, Entry, EntryDraft, EntryId, PersonId, Stamp } from '#core/journal';
import type { Clock } from './clock';

/**
 * What is to be written. It brings an id of its own (`NotebookState.newId`) where another draft of
 * the same deed names it: the two are still written together or not at all.
 */
export type WritableDraft = EntryDraft & { readonly id?: EntryId };

/** Gives drafts what every entry has: an id, a stamp after the last one seen, device and author. */
export function writeEntries(
  drafts: readonly WritableDraft[],
  by: { clock: Clock; device: DeviceId; author: PersonId | null; after: Stamp | null },
): readonly Entry[] {
  let last = by.after;
  return drafts.map((draft) => {
    last = nextStamp(last, by.clock.nowMs());
    const id = freshId<EntryId>(by.clock);
    return { id, at: last, device: by.device, author: by.author, v: 1, ...draft } as Entry;
  });
}

/** A new id for a person, an investigation, a specimen or an entry. */
export const freshId = <Id extends AnyId>(clock: Clock): Id =>
  newId<Id>(clock.nowMs(), clock.randomBytes(10));
