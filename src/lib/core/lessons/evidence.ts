import type { CivilDay } from '#core/calendar';
import type { GraphKind } from '#core/graphs';
import type {
  DrawingId,
  EntryId,
  EvidenceLevel,
  EvidenceNote,
  InvestigationId,
  PersonId,
  SpecimenId,
  Stamp,
} from '#core/journal';
import type { Measured } from '#core/measure';
import type { AskedQuestion, Level } from '#core/questions';
import type { ReviewItem } from './review-item';
import type { Skill, SkillId } from './skill';

/** What a skill was shown by, so that it can be opened and looked at. */
export type EvidenceOf =
  | {
      readonly kind: 'answer';
      readonly entry: EntryId;
      readonly question: AskedQuestion;
      readonly answer: string;
    }
  /** A question in somebody's own words, what they said the answer was, and what the child said. */
  | {
      readonly kind: 'own-answer';
      readonly entry: EntryId;
      readonly level: Level;
      readonly text: string;
      readonly answer: string;
      readonly said: string;
    }
  | {
      readonly kind: 'review';
      readonly entry: EntryId;
      readonly item: ReviewItem;
      readonly answer: string;
    }
  /** The kind is null where it is a later program's. */
  | { readonly kind: 'drawing'; readonly drawing: DrawingId; readonly graph: GraphKind | null }
  /** Days that were sorted by hand for a drawing. */
  | { readonly kind: 'tally'; readonly drawing: DrawingId }
  | {
      readonly kind: 'own-question';
      readonly entry: EntryId;
      readonly text: string;
      readonly answer: string | null;
    }
  | ({ readonly kind: 'reading' | 'estimate'; readonly entry: EntryId } & Measuring)
  /** The same thing read on the other side of the ruler. */
  | ({ readonly kind: 'both-sides'; readonly entry: EntryId; readonly other: Measured } & Measuring)
  /** That something was foretold; what, is under seal until its day. */
  | { readonly kind: 'prediction'; readonly entry: EntryId; readonly specimen: SpecimenId }
  | {
      readonly kind: 'fair-test-plan';
      readonly entry: EntryId;
      readonly investigation: InvestigationId;
    };

type Measuring = { readonly specimen: SpecimenId; readonly measured: Measured };

/** What the notebook noticed by itself, whoever did it. */
export interface FoundEvidence {
  readonly id: EntryId | DrawingId;
  readonly author: PersonId | null;
  readonly day: CivilDay;
  readonly at: Stamp;
  readonly how: EvidenceLevel;
  readonly of: EvidenceOf;
  readonly skills: readonly SkillId[];
}

/** One dated piece of evidence for one skill. Never a score. */
export interface EvidencePiece {
  /** Of the note, or of what was noticed. */
  readonly id: EntryId | DrawingId;
  readonly skill: SkillId;
  readonly day: CivilDay;
  readonly at: Stamp;
  readonly how: EvidenceLevel;
  /** What a grown-up wrote about it; null where the notebook noticed it by itself. */
  readonly note: EvidenceNote | null;
  /** What it was shown by; empty for a note with nothing attached. */
  readonly of: readonly EvidenceOf[];
}

/** How often a skill was seen: alone on three different days or more, at all, or not yet. */
export const seenHow = ['often', 'sometimes', 'not-yet'] as const;
export type SeenHow = (typeof seenHow)[number];

export interface SkillEvidence {
  readonly skill: Skill;
  readonly seen: SeenHow;
  /** The newest first. */
  readonly pieces: readonly EvidencePiece[];
}

/** What was kept but cannot be told as evidence: an entry of a later program, or a damaged one. */
export interface UnreadEvidence {
  readonly id: EntryId | DrawingId;
  readonly why: 'not-a-question' | 'not-a-review' | 'not-a-skill' | 'not-a-graph' | 'not-a-day';
}

/** What has been seen of one child, by skill. */
export interface Evidence {
  readonly skills: readonly SkillEvidence[];
  /** What nobody put a name to, in a household of several children: a note can say whose it is. */
  readonly nobodys: readonly FoundEvidence[];
  readonly unread: readonly UnreadEvidence[];
}
