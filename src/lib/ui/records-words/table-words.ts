import { civilDay, formatDay, type CivilDay, type DayTextError } from '#core/calendar';
import type {
  AlreadyThere,
  CsvError,
  ImportField,
  Outcome,
  PassedOver,
  PreviewRow,
  Refusal,
  RowContent,
} from '#core/exchange';
import {
  formatExactNumber,
  formatMeasured,
  type Measured,
  type ParseError,
  type Unit,
} from '#core/measure';
import { fileErrorWords, numberWords, type FileError } from './records-words';
import { stateWords } from '#ui/words';

/** What the page for bringing in a table says, row by row. For grown-ups. */

/** What a column can hold, for choosing. */
export const importFieldWords: Readonly<Record<ImportField, string>> = {
  day: 'Day',
  time: 'Time of day',
  number: 'Number that was read',
  unit: 'Unit of each number',
  mark: 'Mark it was read to',
  state: 'State of the day (missed, not up yet ...)',
  word: 'Word of the day',
  specimen: 'Which plant, gauge or stick',
  investigation: 'Which investigation',
  note: 'Note',
  why: 'Why there is no number',
  'span-days': 'Days a rain total covers',
  leaves: 'Leaves counted',
  weather: 'Weather',
  line: 'Whether the line counts',
  cm: 'Exact centimetres',
  value: 'Exact value',
  'all-readings': 'All readings of one moment',
};

/** Why a table is not read at all. */
export function tableErrorWords(error: CsvError | FileError): string {
  switch (error.kind) {
    case 'open-quote':
      return `A quotation mark is opened on line ${numberWords(error.line)} (row ${numberWords(error.row)}) and never closed, so that the rest cannot be told apart. Take that mark out, or close it, and bring the file again.`;
    case 'empty':
      return 'There is nothing in it.';
    case 'too-many-rows':
      return `It has more than ${numberWords(error.most)} rows. Cut it into smaller tables, a year at a time for instance.`;
    default:
      return fileErrorWords(error);
  }
}

/** 1 row, 1,096 rows. */
export const rowsWords = (count: number): string =>
  count === 1 ? '1 row' : `${numberWords(count)} rows`;

/** From which day to which, and between which numbers, the rows of a table reach. */
export function tableSpanWords(
  days: { readonly first: CivilDay; readonly last: CivilDay },
  range: { readonly least: Measured; readonly greatest: Measured } | null,
): string {
  const [first, last] = [formatDay(days.first, 'long'), formatDay(days.last, 'long')];
  const when = first === last ? `On ${first}` : `From ${first} to ${last}`;
  if (!range) return `${when}.`;
  const [least, greatest] = [formatMeasured(range.least), formatMeasured(range.greatest)];
  return least === greatest
    ? `${when}; ${first === last ? 'the' : 'every'} number is ${least}.`
    : `${when}; the numbers go from ${least} to ${greatest}.`;
}

/** Days later than today among those that would come in. */
export const toComeWords = (days: number): string =>
  days === 1
    ? 'One of these days has not come yet. Is that right?'
    : `${numberWords(days)} of these days have not come yet. Is that right?`;

/** Days of which the log has another number. */
export const anotherNumberWords = (days: number): string =>
  days === 1
    ? 'One of these days has another number in this log already. Both will stand there.'
    : `${numberWords(days)} of these days have another number in this log already. Both will stand there.`;

/** A month in words: March 2026. */
export const monthWords = (month: string): string =>
  formatDay(civilDay(`${month}-01`), 'long')
    .split(' ')
    .slice(2)
    .join(' ');

/**
 * An exact amount of rain as it is added up: to the tenth of a millimetre and the hundredth of an
 * inch, noughts at the end written, so that a column of them lines up.
 */
export const addedUpWords = (exact: number): { readonly mm: string; readonly inches: string } => ({
  mm: withPlaces(formatExactNumber(exact, 'mm', '0.1 mm'), 1),
  inches: withPlaces(formatExactNumber(exact, 'in', '0.01 in'), 2),
});

function withPlaces(number: string, places: number): string {
  const [whole, fraction = ''] = number.split('.');
  return `${whole}.${fraction.padEnd(places, '0')}`;
}

/** How many rows have which outcome, those with none left out. */
export const outcomeCountWords = (
  countByOutcome: Readonly<Record<Outcome, number>>,
): readonly string[] =>
  outcomeCounts.flatMap(({ outcome, words }) =>
    countByOutcome[outcome] > 0 ? [`${numberWords(countByOutcome[outcome])} ${words}`] : [],
  );

const outcomeCounts: readonly { readonly outcome: Outcome; readonly words: string }[] = [
  { outcome: 'reading', words: 'with a number' },
  { outcome: 'state', words: 'with a state of the day (missed, not up yet ...)' },
  { outcome: 'kind-word', words: 'with a word' },
  { outcome: 'note', words: 'with a note' },
  { outcome: 'already-there', words: 'in the log already: they change nothing' },
  { outcome: 'passed-over', words: 'passed over: headings, blank rows, rows of another' },
  { outcome: 'refused', words: 'that cannot be read' },
];

/** What a row brings in. */
export function rowContentWords(content: RowContent): string {
  switch (content.kind) {
    case 'reading': {
      const { measured, again = [], spanDays, leaves, weather, note } = content;
      return [
        [measured, ...again].map((each) => formatMeasured(each)).join(', '),
        spanDays === undefined ? '' : `over ${spanDays} days`,
        leaves === undefined ? '' : `${leaves} leaves`,
        weather ?? '',
        note ?? '',
      ]
        .filter((part) => part !== '')
        .join('; ');
    }
    case 'state':
      return [stateWords[content.state].inLog, content.why ?? ''].filter(Boolean).join('; ');
    case 'kind-word':
      return content.word;
    case 'note':
      return content.text;
  }
}

/** How numbers' units are called, for choosing. */
export const unitChoiceWords: Readonly<Record<Unit, string>> = {
  in: 'inches (in)',
  ft: 'feet (ft)',
  yd: 'yards (yd)',
  mm: 'millimetres (mm)',
  cm: 'centimetres (cm)',
  m: 'metres (m)',
  count: 'just a count',
};

/** Why a row does not come in; empty for one that does. */
export function whyNotInWords(row: PreviewRow): string {
  switch (row.outcome) {
    case 'already-there':
      return alreadyThereWords[row.why.line];
    case 'passed-over':
      return passedOverWords[row.why.kind];
    case 'refused':
      return refusalWords(row.why);
    default:
      return '';
  }
}

const alreadyThereWords: Readonly<Record<AlreadyThere['line'], string>> = {
  counts: 'in this log already',
  'crossed out': 'was in this log and has been crossed out',
  'taken back': 'was in this log and has been taken back',
};

const passedOverWords: Readonly<Record<PassedOver['kind'], string>> = {
  heading: 'names the columns',
  blank: 'nothing in it',
  'other-specimen': 'belongs to another plant, gauge or stick',
  'crossed out': 'was crossed out where it came from',
  'taken back': 'was taken back where it came from',
};

/** Why a row cannot be read, and what would help. */
export function refusalWords(refusal: Refusal): string {
  switch (refusal.kind) {
    case 'ragged':
      return `has ${columnsWords(refusal.found)} where the first row has ${refusal.expected}`;
    case 'text-after-quote':
      return 'has text behind a closing quotation mark, so its columns cannot be told apart';
    case 'no-day':
      return 'has no day';
    case 'no-unit':
      return 'has no unit: see the question about it';
    case 'no-word':
      return 'has no word';
    case 'day':
      return dayErrorWords(refusal.error);
    case 'day-number':
      return `“${refusal.read}” is not a whole number of days, or its date is not chosen yet`;
    case 'time':
      return `“${refusal.read}” is not a time of day`;
    case 'number':
      return numberErrorWords(refusal.error, refusal.read);
    case 'state':
      return `“${refusal.read}” is neither a number nor a state that is known here`;
    case 'state-beside-number':
      return `says “${stateWords[refusal.state].inLog}” and ${refusal.read} at once`;
    case 'disagrees':
      return `the reading “${refusal.read}” and the exact value “${refusal.exactly}” beside it differ`;
    case 'too-long':
      return `${importFieldWords[refusal.field].toLowerCase()}: longer than ${refusal.most} characters`;
    default:
      return `“${refusal.read}” cannot be read as: ${importFieldWords[refusal.kind].toLowerCase()}`;
  }
}

const columnsWords = (count: number): string => (count === 1 ? '1 column' : `${count} columns`);

function dayErrorWords(error: DayTextError): string {
  const read = `“${error.text}”`;
  switch (error.kind) {
    case 'not-a-day':
      return `${read} is not a day`;
    case 'two-digit-year':
      return `${read}: the year needs four digits`;
    case 'no-such-day':
      return `there is no day ${read}${error.otherOrder ? ` (the other way round it is ${formatDay(error.otherOrder, 'long')})` : ''}`;
    case 'year-out-of-range':
      return `${read}: years from 1900 to 2199 can be kept`;
    case 'wrong-weekday':
      return `${read}: that was ${formatDay(error.day, 'long')}`;
    case 'ambiguous-order':
      return `${read} could be ${formatDay(error.dayFirst, 'long')} or ${formatDay(error.monthFirst, 'long')}: see the question about it`;
  }
}

function numberErrorWords(error: ParseError, whole: string): string {
  const read = `“${whole.slice(0, 40)}”`;
  switch (error.kind) {
    case 'negative':
      return `${read} is below 0`;
    case 'too-big':
      return `${read} is longer than can be kept here`;
    case 'unknown-unit':
      return `${read}: the unit is not known here`;
    case 'ambiguous':
      return error.choices && error.choices.length > 0
        ? `${read} could mean more than one thing, ${error.choices.map((choice) => formatMeasured(choice)).join(' or ')} among them: look at the decimal sign, or write it so`
        : `${read} could mean more than one thing: look at the decimal sign`;
    case 'off-every-mark':
      return `${read} falls between all marks of its unit`;
    case 'unit-mismatch':
      return `${read}: its unit does not go with this log`;
    default:
      return `${read} is not a number that can be read`;
  }
}
