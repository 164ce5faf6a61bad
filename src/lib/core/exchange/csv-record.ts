import type { RowProblem } from './csv-row';
import type { Separator } from './separator';

/** Where the reading of a table file stands. */
export interface CsvPlace {
  /** Characters from the start of the text. */
  readonly at: number;
  /** Which line that is on, the first being 1. */
  readonly line: number;
}

export type CsvRecord =
  | {
      readonly kind: 'record';
      readonly fields: readonly string[];
      readonly problem: RowProblem | null;
      /** Where the next record begins, or the end of the text. */
      readonly next: CsvPlace;
    }
  | { readonly kind: 'open-quote'; readonly line: number };

/** Reads the record that begins at a place before the end of the text. */
export function readRecord(text: string, start: CsvPlace, separator: Separator): CsvRecord {
  const separatorCode = separator.charCodeAt(0);
  const fields: string[] = [];
  let problem: RowProblem | null = null;
  let { at, line } = start;
  for (;;) {
    let field: string;
    if (text.charCodeAt(at) === quote) {
      const quoted = readQuoted(text, at, line);
      if (!quoted) return { kind: 'open-quote', line };
      ({ field, at, line } = quoted);
      const end = endOfPlain(text, at, separatorCode);
      if (end > at) {
        problem ??= { kind: 'text-after-quote', field: fields.length };
        field += text.slice(at, end);
        at = end;
      }
    } else {
      const end = endOfPlain(text, at, separatorCode);
      field = text.slice(at, end);
      if (field.includes('"')) problem ??= { kind: 'quote-inside', field: fields.length };
      at = end;
    }
    fields.push(field);
    if (text.charCodeAt(at) !== separatorCode) break;
    at += 1;
  }
  const next = { at: Math.min(at + lineBreakLength(text, at), text.length), line: line + 1 };
  return { kind: 'record', fields, problem, next };
}

const quote = 0x22;
const carriageReturn = 0x0d;
const lineFeed = 0x0a;

/** Where a field without quotes ends: at a separator, a line break, or the end of the text. */
function endOfPlain(text: string, from: number, separatorCode: number): number {
  let at = from;
  for (; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (code === separatorCode || code === lineFeed || code === carriageReturn) break;
  }
  return at;
}

/** A field in quotes, and the place behind its closing quote; null when there is none. */
function readQuoted(
  text: string,
  from: number,
  startLine: number,
): { readonly field: string; readonly at: number; readonly line: number } | null {
  let field = '';
  let at = from + 1;
  for (;;) {
    const close = text.indexOf('"', at);
    if (close < 0) return null;
    field += text.slice(at, close);
    at = close + 1;
    if (text.charCodeAt(at) !== quote) break;
    field += '"';
    at += 1;
  }
  return { field, at, line: startLine + lineBreaksIn(field) };
}

function lineBreaksIn(field: string): number {
  let count = 0;
  for (let at = 0; at < field.length; at += lineBreakLength(field, at) || 1) {
    if (lineBreakLength(field, at) > 0) count += 1;
  }
  return count;
}

function lineBreakLength(text: string, at: number): 0 | 1 | 2 {
  const code = text.charCodeAt(at);
  if (code === lineFeed) return 1;
  if (code !== carriageReturn) return 0;
  return text.charCodeAt(at + 1) === lineFeed ? 2 : 1;
}
