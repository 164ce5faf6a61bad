import type { CivilDay } from '#core/calendar';
import type { Missing, TableChoice, TableSource } from '#core/graphs';
import type { Notebook } from '#core/journal';
import {
  estimatesOf,
  fairTestOf,
  isAnswered,
  openDoubts,
  rulerPairs,
  seriesOf,
} from '#core/series';
import type { LessonPurpose, PurposeNeed } from './lesson-purpose';

/** What is missing for a lesson: for its graph, or of what its purpose needs of the log. */
export type LessonMissing =
  | Missing
  /** No number is larger than the one before it: there is no jump to show. */
  | { readonly kind: 'no-growth' }
  /** Readings on both sides of the ruler. */
  | { readonly kind: 'more-pairs'; readonly have: number; readonly need: number }
  /** Guesses that were measured. */
  | { readonly kind: 'more-guesses'; readonly have: number; readonly need: number }
  /** Two logs with numbers, for a test of two. */
  | { readonly kind: 'one-log' }
  /** Nobody planned what is to be different and what is kept the same. */
  | { readonly kind: 'no-fair-test' }
  /** Numbers that the counts hang on may be slips: until they are settled, nothing is asked. */
  | { readonly kind: 'open-doubts'; readonly have: number };

/**
 * What a purpose still lacks with a table, beside what its graph lacks. Not part of the public
 * door.
 */
export const lacksOf = (
  { needs }: Pick<LessonPurpose, 'needs'>,
  choice: TableChoice,
  notebook: Notebook,
  today: CivilDay,
): readonly LessonMissing[] => {
  const material = { choice, notebook, today };
  const doubted = hangsOnReadings.has(choice.source) ? doubtsIn(material) : 0;
  return [
    ...(needs ? lacks[needs](material) : []),
    ...(doubted > 0 ? [{ kind: 'open-doubts' as const, have: doubted }] : []),
  ];
};

/** Counts of days that one number can move from one kind to another. */
const hangsOnReadings: ReadonlySet<TableSource> = new Set(['wet-days', 'growth-days']);

const doubtsIn = (material: Material): number => {
  const { choice, notebook, today } = material;
  const all = [...notebook.specimens.values()]
    .filter(({ investigation }) => investigation === choice.investigation)
    .flatMap(({ id }) => seriesOf(notebook, id, today) ?? []);
  const doubted = seriesIn(material)
    .flatMap((series) => openDoubts(notebook, series, all))
    .filter(({ reading }) => reading.day >= choice.from && reading.day <= choice.to);
  return new Set(doubted.map(({ reading }) => reading.id)).size;
};

/** Two heights on both sides, and three guesses, make a talk (common practice, no source). */
const fewestPairs = 2;
const fewestGuesses = 3;

interface Material {
  readonly choice: TableChoice;
  readonly notebook: Notebook;
  readonly today: CivilDay;
}

const seriesIn = ({ choice, notebook, today }: Material) =>
  choice.specimens.flatMap((specimen) => seriesOf(notebook, specimen, today) ?? []);

const lacks: Readonly<Record<PurposeNeed, (material: Material) => readonly LessonMissing[]>> = {
  growth: (material) => {
    const { from, to } = material.choice;
    const grew = seriesIn(material).some(({ points }) =>
      points
        .filter(({ day }) => day >= from && day <= to)
        .some(({ exact }, index, shown) => exact > (shown[index - 1]?.exact ?? exact)),
    );
    return grew ? [] : [{ kind: 'no-growth' }];
  },
  pairs: (material) => {
    const have = seriesIn(material).flatMap((series) =>
      rulerPairs(material.notebook, series),
    ).length;
    return have < fewestPairs ? [{ kind: 'more-pairs', have, need: fewestPairs }] : [];
  },
  guesses: ({ choice, notebook }) => {
    const all = choice.specimens.flatMap((specimen) => estimatesOf(notebook, specimen));
    const have = all.filter(isAnswered).length;
    return have < fewestGuesses ? [{ kind: 'more-guesses', have, need: fewestGuesses }] : [];
  },
  'two-logs': (material) => {
    const { choice, notebook } = material;
    const shown = seriesIn(material).filter(({ points }) =>
      points.some(({ day }) => day >= choice.from && day <= choice.to),
    );
    const isPlanned = fairTestOf(notebook, choice.investigation) !== null;
    return [
      ...(shown.length < 2 ? [{ kind: 'one-log' as const }] : []),
      ...(isPlanned ? [] : [{ kind: 'no-fair-test' as const }]),
    ];
  },
};
