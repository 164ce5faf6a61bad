import type { Evidence, EvidencePiece } from './evidence';

/** Chosen work to keep: three to five pieces are usually wanted (law differs; own rules decide). */
export const samplesToKeep = { fewest: 3, most: 5 } as const;

/**
 * The drawings of a child that a grown-up chose to keep: notes with a drawing attached, each with
 * its day and the help that was given. The newest first; a drawing chosen for several skills is
 * there once, with the newest note.
 * @example
 * keptSamples({ skills: [], nobodys: [], unread: [] }) // => []
 */
export const keptSamples = ({ skills }: Evidence): readonly EvidencePiece[] => {
  const chosen = skills
    .flatMap(({ pieces }) => pieces)
    .filter(({ note }) => note?.drawing !== undefined)
    .sort((left, right) => (sortKey(left) < sortKey(right) ? 1 : -1));
  return chosen.filter(
    ({ note }, index) => chosen.findIndex((each) => each.note?.drawing === note?.drawing) === index,
  );
};

const sortKey = ({ day, at, id }: EvidencePiece): string => `${day} ${at} ${id}`;
