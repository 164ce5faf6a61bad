import type { CivilDay } from '#core/calendar';
import { rightGraphOf, tableChoicesOf, tableOf, type TableChoice } from '#core/graphs';
import type { DrawingId, EntryDraft, Notebook, Stage } from '#core/journal';
import type { Series } from '#core/series';

/**
 * The table of this day’s readings that a child can draw a line plot of, or null where the day is
 * not the one that is offered to be drawn, or no line plot comes of it.
 */
export function plotToDraw(
  notebook: Notebook,
  { specimen, investigation }: Pick<Series, 'specimen' | 'investigation'>,
  day: CivilDay,
  stage: Stage,
): TableChoice | null {
  const about = { investigation: investigation.id, specimen: specimen.id };
  const offers = tableChoicesOf(notebook, about, stage, day);
  const variants = offers.find(({ source }) => source === 'reads-of-one')?.variants ?? [];
  const choice = variants.find(
    (each) => each.choice.from === day && each.choice.to === day,
  )?.choice;
  const table = choice && tableOf(choice, notebook, day);
  return choice && table && rightGraphOf('line-plot', table, stage).ok ? choice : null;
}

/** A line plot that is begun: its frame is given, the child makes the marks. */
export const begunPlot = (drawing: DrawingId, choice: TableChoice, stage: Stage): EntryDraft => {
  const { investigation, specimens } = choice;
  const [specimen] = specimens;
  return {
    ...{ kind: 'drawing-begun', drawing, investigation, graph: 'line-plot', stage },
    ...(specimen === undefined ? {} : { specimen }),
    level: 'frame-given',
    choice: { ...choice },
  };
};
