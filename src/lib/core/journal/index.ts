export type * from './care';
export { decodeEntry, isUnderstood } from './decode-entry';
export type { DecodeError, JournalEntry, UnknownEntry } from './decode-entry';
export { compareEntries, mergeEntries } from './entry-order';
export type { Entry, EntryDraft, EntryKind, EntryOf } from './entry-schema';
export { foldEntries } from './fold';
export { isId, newId } from './id';
export type {
  AnyId,
  DeviceId,
  DrawingId,
  EntryId,
  InvestigationId,
  LessonId,
  PersonId,
  SpecimenId,
} from './id';
export type { TakenBack } from './line';
export { middleReading } from './middle-reading';
export type * from './notebook';
export { isStamp, momentOfStamp, nextStamp, stampOf, type Stamp } from './stamp';
export type * from './teaching';
export * from './vocabulary';
/** The fields that entries are made of, for sheets inside them that higher parts of core decode. */
export * as fieldSchemas from './field-schemas';
