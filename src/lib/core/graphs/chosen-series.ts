import type { CivilDay } from '#core/calendar';
import type { Notebook } from '#core/journal';
import { seriesOf, type Series } from '#core/series';
import { cutToDays } from './cut-to-days';
import type { TableChoice } from './table-choice';

/**
 * The logs a choice is of, cut to its days; those the notebook does not know are left out. Not
 * part of the public door.
 */
export const chosenSeries = (
  choice: Pick<TableChoice, 'specimens' | 'from' | 'to'>,
  notebook: Notebook,
  today: CivilDay,
): readonly Series[] =>
  choice.specimens.flatMap((specimen) => {
    const series = seriesOf(notebook, specimen, today);
    return series ? [cutToDays(series, choice)] : [];
  });
