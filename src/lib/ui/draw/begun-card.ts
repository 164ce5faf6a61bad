import type { CivilDay } from '#core/calendar';
import {
  decodeTableChoice,
  isDrawingFinished,
  lastDrawing,
  tableOfDrawing,
  type GraphKind,
  type SortedOtherwise,
} from '#core/graphs';
import type { DrawingRecord, Notebook } from '#core/journal';
import { graphNames, isGraphKind, sourceWords } from '#ui/graph-words';

/** A drawing that was begun, as its card shows it. */
export interface BegunCard {
  readonly record: DrawingRecord;
  readonly graph: GraphKind;
  readonly title: string;
  readonly stands: 'sort on' | 'go on' | 'done';
  /** The days that were sorted otherwise than the log has them. */
  readonly otherwise: readonly SortedOtherwise[];
}

/** The cards of drawings begun before, the newest first; those of a later program are left out. */
export const begunCards = (
  records: readonly DrawingRecord[],
  notebook: Notebook,
  today: CivilDay,
): readonly BegunCard[] =>
  records
    .flatMap((record) => {
      const { graph, versions } = record;
      if (!isGraphKind(graph)) return [];
      const hasTally = versions.some(({ paper }) => Object.hasOwn(paper, 'tally'));
      const made = hasTally ? tableOfDrawing(record, notebook, today) : null;
      const isSorting = made?.ok === true && made.value.sorting !== null;
      const card: BegunCard = {
        ...{ record, graph, title: lastDrawing(versions)?.title || nameOf(record, graph) },
        stands: isSorting ? 'sort on' : isDrawingFinished(record) ? 'done' : 'go on',
        otherwise: made?.ok ? made.value.otherwise : [],
      };
      return [card];
    })
    .reverse();

/** Before it has a title: its graph, and what that is of. */
const nameOf = ({ choice }: DrawingRecord, graph: GraphKind): string => {
  const chosen = decodeTableChoice(choice);
  const name = graphNames[graph];
  return chosen.ok ? `${name}: ${sourceWords[chosen.value.source]}` : name;
};
