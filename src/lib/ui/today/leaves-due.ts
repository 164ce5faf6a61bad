import type { CivilDay } from '#core/calendar';
import type { Notebook } from '#core/journal';
import { secondMeasuresDue, type Series } from '#core/series';

/** Whether a fair test waits for the leaves of this plant to be counted today. */
export const areLeavesDue = (notebook: Notebook, series: Series, today: CivilDay): boolean =>
  secondMeasuresDue(notebook, series, today).some(
    ({ measure, isDue }) => measure === 'leaves' && isDue,
  );
