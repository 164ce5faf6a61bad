import type { PersonId, Quantity } from '#core/journal';
import { openEstimate, type Series } from '#core/series';
import type { NotebookState } from '#notebook';

/**
 * Whether a guess belongs before the next measuring of this log. A plant that is not up, and one
 * whose height of today is known already, has nothing to be guessed; rain is guessed on wish only.
 */
export function asksForGuess({ investigation, points, days }: Series, today: string): boolean {
  const isRead = days.some(({ day, state }) => day === today && state === 'number');
  const asks: Readonly<Record<Quantity, boolean>> = {
    'plant-height': points.length > 0 && !isRead,
    shadow: true,
    length: true,
    rain: false,
    'daily-kind': false,
  };
  return asks[investigation.quantity];
}

/** Whether the one who writes has made a guess that waits for its reading. */
export const hasGuessed = (
  { contents, author, today }: NotebookState,
  { specimen }: Series,
): boolean => {
  const known: PersonId | null = author && contents.people.has(author) ? author : null;
  return openEstimate(contents, specimen.id, today, known) !== null;
};

/** "Measure right away" holds for one log on one day. */
export const skipKey = ({ specimen }: Series): string => `measure-right-away ${specimen.id}`;
