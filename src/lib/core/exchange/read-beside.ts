import { failed, ok, type Result } from '#core/base';
import type { Cell } from './import-cell';
import type { ReadingRow, Refusal } from './row-content';
import { weatherOfWord } from './state-words';

type Beside = Pick<ReadingRow, 'spanDays' | 'leaves' | 'weather' | 'note'>;

/** What stands beside a number: days covered, leaves, the weather and a note. */
export function readBeside(cell: Cell): Result<Beside, Refusal> {
  const spanDays = wholeNumber(cell('span-days'), /^(\d{1,3})(?:\.0*)?(?:\s*days?)?$/i, 1, 60);
  if (spanDays === null) return failed({ kind: 'span-days', read: cell('span-days') });
  const leaves = wholeNumber(cell('leaves'), /^(\d{1,3})(?:\.0*)?$/, 0, 999);
  if (leaves === null) return failed({ kind: 'leaves', read: cell('leaves') });
  const sky = cell('weather');
  const weather = weatherOfWord(sky);
  const note = [cell('note'), weather === null ? sky : ''].filter((text) => text !== '').join('; ');
  if (note.length > longestNote)
    return failed({ kind: 'too-long', field: 'note', most: longestNote });
  return ok({
    ...(spanDays === undefined || spanDays === 1 ? {} : { spanDays }),
    ...(leaves === undefined ? {} : { leaves }),
    ...(weather === null ? {} : { weather }),
    ...(note === '' ? {} : { note }),
  });
}

/** The longest note an entry may carry. */
export const longestNote = 4000;

/** The number of a cell, undefined for an empty one, null for one that holds something else. */
function wholeNumber(
  text: string,
  form: RegExp,
  least: number,
  most: number,
): number | null | undefined {
  if (text === '') return undefined;
  const read = form.exec(text)?.[1];
  const number = Number(read);
  return read !== undefined && number >= least && number <= most ? number : null;
}
