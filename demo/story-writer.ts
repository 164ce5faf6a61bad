import { civilDay, type CivilDay } from '#core/calendar';
import {
  newId,
  stampOf,
  type AnyId,
  type DeviceId,
  type EntryDraft,
  type EntryId,
  type JournalEntry,
  type PersonId,
} from '#core/journal';
import { parseMeasured, type MarkId, type Measured, type Unit } from '#core/measure';

/**
 * Writes a made-up journal as a family's device would have written it, at made-up moments. The
 * same story always gives the same journal, byte for byte.
 */
export class StoryWriter {
  readonly entries: JournalEntry[] = [];
  #moment = 0;
  #chance = firstChance;
  readonly #device = this.id<DeviceId>('2026-03-01T09:00Z');

  /** Two writers of one family share its device; another chance keeps their ids apart. */
  constructor(chance: number = firstChance) {
    if (chance !== firstChance) this.#chance = chance;
  }

  /** A new id, made at a moment of the story. */
  id<Id extends AnyId>(at: string): Id {
    const bytes = Uint8Array.from({ length: 10 }, () => this.#nextByte());
    return newId<Id>(Date.parse(at), bytes);
  }

  /** Writes an entry at a time of a day; entries of one time keep their order. */
  write(day: string, time: string, author: PersonId | null, draft: EntryDraft): EntryId {
    const moment = Date.parse(`${day}T${time}:00Z`);
    this.#moment = Math.max(this.#moment + 1, moment);
    const id = this.id<EntryId>(new Date(this.#moment).toISOString());
    const at = stampOf(this.#moment);
    this.entries.push({ id, at, device: this.#device, author, v: 1, ...draft } as JournalEntry);
    return id;
  }

  /** Park and Miller's minimal generator: small, known, and enough for ids that must not repeat. */
  #nextByte(): number {
    this.#chance = (this.#chance * 48271) % 2147483647;
    return this.#chance & 0xff;
  }
}

const firstChance = 20260302;

/** A reading as the story tells it: `12`, `4 1/2`. */
export function said(text: string, unit: Unit, mark: MarkId): Measured {
  const measured = parseMeasured(text, { unit, mark });
  if (!measured.ok) throw new Error(`The story has a reading that cannot be read: ${text}`);
  return measured.value;
}

export const onDay = (text: string): CivilDay => civilDay(text);
