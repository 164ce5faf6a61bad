import { failed, ok, type Result } from '#core/base';
import type { Cell } from './import-cell';
import type { ImportMapping } from './import-mapping';
import type { Refusal } from './row-content';
import { stateOfWord, type StateRead } from './state-words';

/** What a row is about: a number, a state of the day, a word, a note, or nothing. */
export type RowKind = StateRead | 'nothing';

/**
 * Tells it from the state cell, or where there is none, from what stands in the number's place. A
 * state that says there is no number, beside a number, is a contradiction and not resolved here.
 */
export function rowKindOf(cell: Cell, mapping: ImportMapping): Result<RowKind, Refusal> {
  const written = cell('state');
  return written === '' ? byNumber(cell, mapping) : byState(written, cell('number'));
}

function byState(written: string, number: string): Result<RowKind, Refusal> {
  const state = stateOfWord(written);
  if (state === null) return failed({ kind: 'state', read: written });
  const hasNumber = state === 'number' || state === 'word' || state === 'note';
  if (hasNumber || !/\d/.test(number)) return ok(state);
  return failed({ kind: 'state-beside-number', read: number, state });
}

function byNumber(
  cell: Cell,
  { columnByField, blankMeans }: ImportMapping,
): Result<RowKind, Refusal> {
  if (columnByField.number === undefined && columnByField.word !== undefined) {
    return ok(cell('word') === '' ? 'nothing' : 'word');
  }
  const read = cell('number');
  if (read === '') return ok(blankMeans === 'missed' ? 'missed' : 'nothing');
  if (/\d|[\u00bc-\u00be\u2150-\u215e]/.test(read)) return ok('number');
  const state = stateOfWord(read);
  if (state === null || state === 'number' || state === 'word' || state === 'note') {
    return failed({ kind: 'state', read });
  }
  return ok(state);
}
