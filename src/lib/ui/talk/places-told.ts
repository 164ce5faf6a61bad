import type { CivilDay } from '#core/calendar';
import type { AnswerBy, Told } from '#core/questions';

/** What is said with the places that were picked; null while something is still to be picked. */
export function placesTold(
  by: AnswerBy,
  picked: readonly Told[],
  gapDays: number | null,
): Told | null {
  const [first] = picked;
  if (!first) return null;
  if (by !== 'days' && by !== 'stretch') return first;
  const days = picked.flatMap((told): readonly CivilDay[] =>
    told.kind === 'day' ? [told.day] : [],
  );
  const [from, to] = [...days].sort();
  // One day of two is an answer: it is asked about.
  if (by === 'days' || !from || !to) return from && !to ? first : { kind: 'days', days };
  return gapDays === null ? null : { kind: 'interval', from, to, gapDays };
}
