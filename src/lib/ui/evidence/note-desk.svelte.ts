import type { CivilDay } from '#core/calendar';
import type { DrawingId, EntryId, EvidenceLevel, EvidenceNote } from '#core/journal';
import type { SkillId } from '#core/lessons';

/** A note before it is written. */
export interface NoteWish {
  readonly skill: SkillId | '';
  readonly how: EvidenceLevel;
  readonly day: CivilDay;
  readonly drawing: DrawingId | null;
  readonly answer: EntryId | null;
  readonly note: string;
  /** The note it stands in place of, which is taken back with it. */
  readonly replaces: EntryId | null;
}

/** Where on the page a note is being written: one at a time. */
export class NoteDesk {
  /** Empty while none is. */
  place = $state('');
  wish = $state.raw<NoteWish | null>(null);

  open(place: string, wish: NoteWish): void {
    this.place = place;
    this.wish = wish;
  }

  close(): void {
    this.place = '';
    this.wish = null;
  }
}

export const emptyWish = (day: CivilDay): NoteWish => ({
  ...{ skill: '', how: 'alone', day, drawing: null, answer: null, note: '', replaces: null },
});

/** A note to be written anew begins as it was. */
export const wishOf = (note: EvidenceNote, skill: SkillId): NoteWish => ({
  ...{ skill, how: note.how, day: note.day, replaces: note.id },
  ...{ drawing: note.drawing ?? null, answer: note.answer ?? null, note: note.note ?? '' },
});
