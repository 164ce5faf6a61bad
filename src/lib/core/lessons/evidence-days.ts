import type { CivilDay } from '#core/calendar';
import type { EvidenceLevel } from '#core/journal';

/** A day something was seen on, and the most that was seen of it that day. */
export interface EvidenceDay {
  readonly day: CivilDay;
  readonly how: EvidenceLevel;
}

/**
 * The days of some pieces of evidence, the newest first, each once: alone counts more than with
 * help, and with help more than only seen.
 * @example
 * evidenceDays([{ day: '2026-03-02', how: 'seen' }, { day: '2026-03-03', how: 'seen' }, { day: '2026-03-02', how: 'alone' }]) // => [{ day: '2026-03-03', how: 'seen' }, { day: '2026-03-02', how: 'alone' }]
 */
export const evidenceDays = (pieces: readonly EvidenceDay[]): readonly EvidenceDay[] =>
  [...new Set(pieces.map(({ day }) => day))]
    .sort()
    .reverse()
    .map((day) => {
      const hows = pieces.filter((piece) => piece.day === day).map(({ how }) => how);
      return { day, how: inOrder.find((how) => hows.includes(how))! };
    });

const inOrder: readonly EvidenceLevel[] = ['alone', 'with-help', 'seen'];
