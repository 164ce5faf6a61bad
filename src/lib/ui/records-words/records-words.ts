import { civilDayAt, clockTimeAt, formatDay } from '#core/calendar';
import type { BackupError, TextError } from '#core/exchange';
import type { Persistence, Room } from '#notebook';
import type { DamagedRecord, JournalStore } from '#store';

/** What the Records page says to a grown-up about keeping, copies and files. */

export const keepsWords: Readonly<Record<JournalStore['keeps'] | 'made-up', string>> = {
  'made-up': 'This is the made-up notebook. Nothing that is done in it is kept.',
  'on-this-device':
    'The notebook is kept in this browser, on this device, and nowhere else unless you take it there.',
  'until-closed':
    'This window keeps the notebook only until it is closed: the browser gives it no place to stay (a private window, perhaps). Save a backup file before you close it, and bring it in again elsewhere.',
};

export const persistenceWords: Readonly<Record<Persistence | 'not-asked', string>> = {
  granted: 'The browser has promised not to clear it away by itself.',
  refused:
    'The browser did not promise it. When the device runs out of room it may clear the notebook away, so a backup file now and then is wise. Some browsers promise it once you have used a page more often: ask again in a week or so.',
  'not-asked':
    'When the device runs out of room, the browser may clear the notebook away. You can ask it not to.',
  'not-available':
    'This browser cannot be asked to keep it for good, so a backup file now and then is wise.',
};

/** What was done with the whole notebook. */
export const putAwayWords: Readonly<Record<'put-away' | 'put-back' | 'erased', string>> = {
  'put-away': 'The notebook is put away.',
  'put-back': 'The notebook is back, as it was.',
  erased:
    'It is erased from this device. Backup files and printed pages are still where you keep them.',
};

export const roomWords = ({ usageBytes, quotaBytes }: Room): string =>
  `It takes up about ${sizeWords(usageBytes)} of the ${sizeWords(quotaBytes)} this browser would let it have.`;

/**
 * A file's size as people say it, in powers of a thousand.
 * @example
 * sizeWords(4_300_000) // => '4.3 MB'
 */
export function sizeWords(bytes: number): string {
  const step = sizeSteps.find(({ bytes: least }) => bytes >= least) ?? sizeSteps.at(-1)!;
  const amount = bytes / step.bytes;
  return `${step.bytes > 1 && amount < 10 ? amount.toFixed(1) : numberWords(amount)} ${step.name}`;
}

const sizeSteps = [
  { bytes: 1e9, name: 'GB' },
  { bytes: 1e6, name: 'MB' },
  { bytes: 1e3, name: 'kB' },
  { bytes: 1, name: 'bytes' },
];

/** A whole number with its thousands marked off: 100,000. */
export const numberWords = (count: number): string => wholeNumbers.format(Math.round(count));

const wholeNumbers = new Intl.NumberFormat('en');

/** One line, 214 lines: an entry of the notebook is called a line on these pages. */
export const linesWords = (count: number): string =>
  count === 1 ? '1 line' : `${numberWords(count)} lines`;

/** Entries that a later program wrote. */
export const newerLinesWords = (count: number): string =>
  count === 1
    ? '1 line comes from a newer Morning Measure. It is kept and passed on as it is, and shows when this program is renewed.'
    : `${linesWords(count)} come from a newer Morning Measure. They are kept and passed on as they are, and show when this program is renewed.`;

/** A moment by the family's clock: Monday 9 March 2026 at 08:05. */
export const momentWords = (atMs: number, timeZone: string): string =>
  `${formatDay(civilDayAt(atMs, timeZone), 'long')} at ${clockTimeAt(atMs, timeZone)}`;

/** Which record in storage is damaged, as far as it still says so itself. */
export function damagedWords({ record, field, expected }: DamagedRecord): string {
  const fields = typeof record === 'object' && record !== null ? record : {};
  const said = (name: string): string | null => {
    const value: unknown = (fields as Readonly<Record<string, unknown>>)[name];
    return typeof value === 'string' && value.length < 100 ? value : null;
  };
  const what = said('kind')?.replaceAll('-', ' ') ?? 'a line that does not say what it is';
  const when = said('day') ?? said('at')?.slice(0, 10);
  const where = faultyFieldWords(field, expected);
  return `${what}${when ? `, ${when}` : ''}: ${where}.`;
}

/** What is wrong with a field, by what the check of it says. */
function faultyFieldWords(field: string, expected: string): string {
  if (field === '') return 'nothing in it can be read';
  const name = field.split('.').at(-1);
  if (expected === `"${name}"`) return `its “${field}” is missing`;
  if (expected.startsWith('not ')) return `its “${field}” is ${expected}`;
  return `its “${field}” should be ${expected}`;
}

/** Why a file could not even be read as text. */
export type FileError =
  | TextError
  | { readonly kind: 'too-big'; readonly bytes: number; readonly mostBytes: number }
  /** The file was moved or changed meanwhile, or the browser may not read it. */
  | { readonly kind: 'unreadable'; readonly detail: string };

/** Why a file is no text at all, and what to do instead. */
export function fileErrorWords(error: FileError): string {
  switch (error.kind) {
    case 'too-big':
      return `It is ${sizeWords(error.bytes)} long, and files up to ${sizeWords(error.mostBytes)} can be read here: many times what a family measures. Is it the right file? If so, save it in smaller parts.`;
    case 'unreadable':
      return 'The browser could not read it. It may have been moved or changed meanwhile; choose it again.';
    case 'empty':
      return 'The file is empty.';
    case 'cut-short':
      return 'The file ends in the middle of a letter: part of it is missing. Get it again from where it came from.';
    case 'binary':
      return binaryWords[error.looksLike];
  }
}

const binaryWords: Readonly<
  Record<Extract<TextError, { readonly kind: 'binary' }>['looksLike'], string>
> = {
  spreadsheet:
    'This is a spreadsheet in its own form. Open it in the spreadsheet program and save it as CSV (“Save as” or “Download”), then bring that file.',
  zip: 'This is a packed folder (zip). Unpack it first, then bring the file inside.',
  pdf: 'This is a PDF, made for printing. Ask for the numbers as a table (CSV).',
  picture: 'This is a picture. The numbers have to come as text.',
  'sound-or-film': 'This is a sound or a film.',
  compressed: 'This is a packed file. Unpack it first, then bring the file inside.',
  unknown: 'This is not text: there are characters in it that no text has.',
};

/** Why a backup file is not brought in. The notebook is as it was. */
export function backupErrorWords(error: BackupError | FileError): string {
  switch (error.kind) {
    case 'empty':
      return 'The file is empty.';
    case 'not-json':
      if (error.position < shortestBackup && !error.isCutShort) {
        return 'This is text of another kind, not a backup of a notebook.';
      }
      return error.isCutShort
        ? `The file breaks off after ${numberWords(error.position)} characters: its end is missing. It may not have been copied to the end.`
        : `The file is damaged: it cannot be read past character ${numberWords(error.position + 1)}.`;
    case 'not-a-backup':
      return error.field === 'format' || error.field === ''
        ? 'This is a file of another kind, not a backup of a notebook.'
        : `This calls itself a backup, but its “${error.field}” is missing or damaged.`;
    case 'newer-version':
      return 'This backup was made by a newer Morning Measure. Load this page again to get the newer one, then bring the file in. The file is fine.';
    case 'wrong-count':
      return `The file says it holds ${linesWords(error.expected)}, and ${numberWords(error.found)} are there. Part of it is missing or was added.`;
    case 'checksum-mismatch':
      return 'Something in the file was changed or damaged after it was made; its checksum does not agree. Which line it is cannot be told.';
    case 'damaged-entry':
      return `Line ${numberWords(error.index + 1)} of the notebook in the file is damaged: ${faultyFieldWords(error.field, error.expected)}.`;
    case 'same-id-twice':
      return `Lines ${numberWords(error.earlier + 1)} and ${numberWords(error.index + 1)} of the notebook in the file claim to be the same and differ. The file was changed after it was made.`;
    default:
      return fileErrorWords(error);
  }
}

/** What goes wrong before this many characters never was a backup. */
const shortestBackup = 20;
