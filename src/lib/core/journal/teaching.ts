import type { CivilDay } from '#core/calendar';
import type { DrawingId, EntryId, InvestigationId, LessonId, PersonId, SpecimenId } from './id';
import type { Line } from './line';
import type { Stamp } from './stamp';
import type * as words from './vocabulary';

type Sheet = Readonly<Record<string, unknown>>;

/** What a notebook holds of teaching with its logs. */
export interface TeachingOfNotebook {
  /** In the order they were made. */
  readonly lessons: ReadonlyMap<LessonId, LessonRecord>;
  readonly answers: readonly QuestionAnswered[];
  readonly ownQuestions: readonly OwnQuestion[];
  readonly reviews: readonly ReviewAnswered[];
  readonly evidence: readonly EvidenceNote[];
}

/** A lesson as it was made. Its choice and its changes are decoded by lessons. */
export interface LessonRecord {
  readonly id: LessonId;
  readonly investigation: InvestigationId;
  readonly specimen?: SpecimenId;
  readonly graph: string;
  readonly choice: Sheet;
  readonly purpose: string;
  readonly minutes: words.LessonMinutes;
  readonly stage: words.Stage;
  readonly seed: number;
  readonly madeAt: Stamp;
  readonly author: PersonId | null;
  /** Oldest first; later ones win, field by field. */
  readonly changes: readonly Sheet[];
  /** The days it was given on. */
  readonly givenOn: readonly CivilDay[];
}

export interface QuestionAnswered extends Line {
  readonly lesson?: LessonId;
  readonly question: Sheet;
  readonly answer: string;
  readonly how: words.EvidenceLevel;
}

export interface OwnQuestion extends Line {
  readonly lesson?: LessonId;
  readonly level: words.OwnQuestionLevel;
  readonly text: string;
  readonly answer?: string;
}

export interface ReviewAnswered extends Line {
  readonly item: Sheet;
  readonly answer: string;
  readonly outcome: words.ReviewOutcome;
}

export interface EvidenceNote extends Line {
  readonly person: PersonId;
  readonly skill: string;
  readonly how: words.EvidenceLevel;
  readonly drawing?: DrawingId;
  readonly answer?: EntryId;
  readonly note?: string;
}
