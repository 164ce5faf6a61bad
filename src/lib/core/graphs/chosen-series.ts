import type { CivilDay } from '#core/calendar';
import type { Notebook } from '#core/journal';
import { seriesOf, type Series } from '#core/series';
import type { TableChoice } from './table-choice';

/**
 * The logs a choice is of, cut to its days; those the notebook does not know are left out. Not
 * part of the public door.
 */
export const chosenSeries = (
  { specimens, from, to }: Pick<TableChoice, 'specimens' | 'from' | 'to'>,
  notebook: Notebook,
  today: CivilDay,
): readonly Series[] =>
  specimens.flatMap((specimen) => {
    const series = seriesOf(notebook, specimen, today);
    if (!series) return [];
    const isChosen = ({ day }: { readonly day: CivilDay }): boolean => from <= day && day <= to;
    return [
      {
        ...series,
        days: series.days.filter(isChosen),
        points: series.points.filter(isChosen),
      },
    ];
  });
