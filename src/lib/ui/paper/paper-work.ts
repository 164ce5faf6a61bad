import { failed, ok, type Result } from '#core/base';
import type { CivilDay } from '#core/calendar';
import {
  decodeTableChoice,
  graphKinds,
  isBeingDrawn,
  lastDrawing,
  rightGraphOf,
  tableOf,
  tableOfDrawing,
  type Drawing,
  type GraphTable,
  type NoGraph,
  type RightGraph,
} from '#core/graphs';
import type { DrawingRecord, Notebook, PersonId } from '#core/journal';
import { drawingChild } from './drawing-child';
import type { PaperRequest } from './paper-request';
import type { PaperSizeName } from './paper-sizes';

/** Everything known about the graph that is to go on paper. */
export interface PaperWork {
  readonly right: RightGraph;
  /** What was measured or watched, as the family calls it. */
  readonly name: string;
  readonly isMadeUp: boolean;
  /** What the child drew, as it was saved last; null where nothing can be shown. */
  readonly own: Drawing | null;
  /** Whether a child's drawing of this log is open: the finished graph is not to be seen then. */
  readonly isBeingDrawn: boolean;
  readonly isLeftHanded: boolean;
  /** The paper most likely in the house: inches and Letter go together. */
  readonly size: PaperSizeName;
}

/**
 * What an address asks for, out of the notebook; null where it asks for nothing in it.
 *
 * @param now the day it is where the family is, and who writes
 */
export function paperWork(
  notebook: Notebook,
  request: PaperRequest,
  now: { readonly today: CivilDay; readonly author: PersonId | null },
): Result<PaperWork, NoPaper> | null {
  const record = request.drawing ? notebook.drawings.get(request.drawing) : undefined;
  const chosen = record ? chosenFor(record) : request.chosen;
  if (!chosen) return request.drawing ? failed({ kind: 'no-table' }) : null;
  const investigation = notebook.investigations.get(chosen.choice.investigation);
  const table = tableFor(chosen, record, notebook, now.today);
  if (!investigation || !table) return failed({ kind: 'no-table' });
  const right = rightGraphOf(chosen.graph, table, chosen.stage);
  if (!right.ok) return right;
  const [first] = chosen.choice.specimens;
  const specimen =
    chosen.choice.specimens.length === 1 && first ? notebook.specimens.get(first) : undefined;
  const child = drawingChild(notebook, record?.author ?? now.author);
  return ok({
    right: right.value,
    name: specimen?.name ?? investigation.title,
    isMadeUp: investigation.origin === 'made-up',
    own: record ? lastDrawing(record.versions) : null,
    isBeingDrawn: isBeingDrawn(notebook, chosen.choice),
    isLeftHanded: child?.hand === 'left',
    size: ['cm', 'mm', 'm'].includes(investigation.unit) ? 'a4' : 'letter',
  });
}

/** Why there is no sheet: the log does not have the table (any more), or it makes no such graph. */
export type NoPaper = { readonly kind: 'no-table' } | NoGraph;

/** A drawing goes on paper from the table it is drawn from: the child's own tally, where one was made. */
const tableFor = (
  { choice }: NonNullable<PaperRequest['chosen']>,
  record: DrawingRecord | undefined,
  notebook: Notebook,
  today: CivilDay,
): GraphTable | null => {
  const drawn = record && tableOfDrawing(record, notebook, today);
  return drawn?.ok ? drawn.value.table : tableOf(choice, notebook, today);
};

const chosenFor = ({ choice, graph, stage }: DrawingRecord): PaperRequest['chosen'] => {
  const kind = graphKinds.find((each) => each === graph);
  const decoded = decodeTableChoice(choice);
  return kind && decoded.ok ? { choice: decoded.value, graph: kind, stage } : null;
};
