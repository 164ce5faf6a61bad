import { isBeingDrawn, type TableChoice } from '#core/graphs';
import type { Notebook } from '#core/journal';

/** Where the open drawing of a log is gone on with; null where none is open. */
export function openDrawingHref(notebook: Notebook, choice: TableChoice): string | null {
  const open = [...notebook.drawings.values()].findLast((record) =>
    isBeingDrawn({ drawings: new Map([[record.id, record]]) }, choice),
  );
  const [first] = choice.specimens;
  return open && first ? `/draw?of=${open.specimen ?? first}&drawing=${open.id}` : null;
}
