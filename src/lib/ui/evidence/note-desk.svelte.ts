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

export interface NoteDeed {
  readonly skill: SkillId;
  readonly did: 'written' | 'taken-back';
}

/** Where on the page a note is being written: one at a time. */
export class NoteDesk {
  /** Empty while none is. */
  place = $state('');
  wish = $state.raw<NoteWish | null>(null);
  /** What was done last with a note; the card of its skill stays open. */
  lastDeed = $state.raw<NoteDeed | null>(null);

  open(place: string, wish: NoteWish): void {
    this.place = place;
    this.wish = wish;
  }

  /** With what was done; null where the form was left. */
  close(deed: NoteDeed | null): void {
    this.place = '';
    this.wish = null;
    this.lastDeed = deed ?? this.lastDeed;
  }
}

/** It claims the least: that it was done alone is for the grown-up to say. */
export const emptyWish = (day: CivilDay): NoteWish => ({
  ...{ skill: '', how: 'seen', day, drawing: null, answer: null, note: '', replaces: null },
});

/** A note to be written anew begins as it was. */
export const wishOf = (note: EvidenceNote, skill: SkillId): NoteWish => ({
  ...{ skill, how: note.how, day: note.day, replaces: note.id },
  ...{ drawing: note.drawing ?? null, answer: note.answer ?? null, note: note.note ?? '' },
});
