import type { EntryDraft, SpecimenId } from '#core/journal';
import type { ImportPreview } from './import-preview';
import type { RowContent } from './row-content';

/**
 * The entries that bring a previewed table into a specimen's log, in the order of its rows. Rows
 * that are there already, passed over or refused make none.
 * @example
 * importDrafts({ rows: [{ row: 2, line: 2, outcome: 'state', what: { kind: 'state', day: '2026-03-02', state: 'missed' }, why: null }] }, 'bean') // => [{ kind: 'day-marked', specimen: 'bean', day: '2026-03-02', state: 'missed' }]
 */
export const importDrafts = (
  { rows }: Pick<ImportPreview, 'rows'>,
  specimen: SpecimenId,
): readonly EntryDraft[] =>
  rows.flatMap(({ what, why }) => (what !== null && why === null ? [draftOf(what, specimen)] : []));

function draftOf(content: RowContent, specimen: SpecimenId): EntryDraft {
  switch (content.kind) {
    case 'reading': {
      const { kind: _, again, ...taken } = content;
      return {
        ...{ kind: 'reading-taken', specimen, ...taken },
        ...(again && again.length > 0 ? { again: [...again] } : {}),
      };
    }
    case 'state': {
      const { kind: _, ...marked } = content;
      return { kind: 'day-marked', specimen, ...marked };
    }
    case 'kind-word': {
      return { kind: 'kind-noted', specimen, day: content.day, word: content.word };
    }
    case 'note': {
      return { kind: 'note-written', specimen, day: content.day, text: content.text };
    }
  }
}
