import type { CivilDay } from '#core/calendar';
import type { DeviceId, EntryId, PersonId } from './id';
import type { Stamp } from './stamp';

/** What everything written for a day has, whatever it says. */
export interface Line {
  readonly id: EntryId;
  readonly at: Stamp;
  readonly device: DeviceId;
  readonly author: PersonId | null;
  readonly day: CivilDay;
  /** Set when the line was taken back: it stays readable with a line through it. */
  readonly takenBack: TakenBack | null;
}

export interface TakenBack {
  readonly by: EntryId;
  readonly at: Stamp;
  readonly author: PersonId | null;
  readonly why?: string;
}

/** The fields of a line, from the entry that wrote it. */
export const lineOf = (
  { id, at, device, author, day }: Omit<Line, 'takenBack'>,
  takenBack: TakenBack | null,
): Line => ({ id, at, device, author, day, takenBack });
