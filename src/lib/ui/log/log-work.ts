import type { CivilDay } from '#core/calendar';
import type { DayMark, KindNote, Note, Reading } from '#core/journal';
import type { DoubtDesk } from '#ui/asking';

/** The one thing that is being done to the log: it stands on the page beside it. */
export type LogWork =
  | { readonly kind: 'write'; readonly day: CivilDay }
  | { readonly kind: 'fix'; readonly reading: Reading }
  | { readonly kind: 'change-mark'; readonly mark: DayMark }
  | { readonly kind: 'change-word'; readonly word: KindNote }
  | { readonly kind: 'note'; readonly day: CivilDay; readonly note: Note | null }
  | { readonly kind: 'doubt'; readonly asked: DoubtDesk };
