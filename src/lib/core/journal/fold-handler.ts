import type { EntryKind, EntryOf } from './entry-schema';
import type { FoldState } from './fold-state';
import type { TakenBack } from './line';

/** What one kind of entry does to the notebook that is being added up. */
export type FoldHandler<Kind extends EntryKind> = (
  state: FoldState,
  entry: EntryOf<Kind>,
  takenBack: TakenBack | null,
) => void;
