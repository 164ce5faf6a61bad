import type { LogRow } from '#core/series';
import type { IconName } from '#ui/icons';
import type { LogWork } from './log-work';

/** What can be done with a row: one thing, or nothing. */
export type LineAction =
  | { readonly do: 'open'; readonly work: LogWork; readonly icon: IconName; readonly name: string }
  | { readonly do: 'put-back'; readonly icon: IconName; readonly name: string }
  | { readonly do: 'lay-out'; readonly icon: IconName; readonly name: string };

/** The one thing a row offers, with the words of its button; null where there is nothing to do. */
export function lineAction(row: LogRow): LineAction | null {
  if ('struck' in row && row.struck !== null) {
    return row.struck === 'taken-back'
      ? { do: 'put-back', icon: 'undo', name: 'Put it back' }
      : null;
  }
  switch (row.kind) {
    case 'reading':
      return open({ kind: 'fix', reading: row.line });
    case 'mark':
      return open({ kind: 'change-mark', mark: row.line });
    case 'word':
      return open({ kind: 'change-word', word: row.line });
    case 'note':
      return open({ kind: 'note', day: row.day, note: row.line });
    case 'blank':
      return row.planned
        ? {
            do: 'open',
            work: { kind: 'write', day: row.day },
            icon: 'pencil',
            name: 'Write it now',
          }
        : null;
    case 'blanks':
      return row.canOpen ? { do: 'lay-out', icon: 'down', name: 'Show them' } : null;
    case 'moved-away':
      return null;
  }
}

const open = (work: LogWork): LineAction => ({
  ...{ do: 'open', work, icon: 'fix', name: 'Fix this' },
});
