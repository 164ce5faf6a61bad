import { failed, ok, type Result } from '#core/base';
import { binaryLookOf, type BinaryLook } from './binary-look';
import { scanBytes } from './byte-scan';

export type TextEncoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

/**
 * Turns bytes into text by the name of an encoding, as the platform's own decoder does:
 * `(bytes, encoding) => new TextDecoder(encoding).decode(bytes)`.
 */
export type DecodeBytes = (bytes: Uint8Array, encoding: TextEncoding) => string;

export interface DecodedText {
  /** Without a byte order mark. */
  readonly text: string;
  readonly encoding: TextEncoding;
  /** Whether the encoding is only the likeliest: letters beyond A to Z may be wrong. */
  readonly isGuess: boolean;
}

/**
 * The text of a file, whatever it was saved by: UTF-8 or UTF-16 with or without a byte order
 * mark, and where it is none of these, the Western encoding of older programs as a guess.
 * Errors: `empty`; `binary` (a picture, a workbook: what it looks like, and where the first byte
 * stands that no text has); `cut-short` (the file ends inside a character).
 * Source of the order of tests: the byte order mark first (The Unicode Standard, 23.8); the rest
 * is common practice, no source.
 * @example
 * decodeText(Uint8Array.from([0xfe, 0xff, 0, 0x61]), (bytes, encoding) => `${encoding} ${bytes}`).value // => { text: 'utf-16be 0,97', encoding: 'utf-16be', isGuess: false }
 * decodeText(Uint8Array.from([0x25, 0x50, 0x44, 0x46, 0x2d]), () => '').error // => { kind: 'binary', looksLike: 'pdf', position: 0 }
 */
export function decodeText(bytes: Uint8Array, decode: DecodeBytes): Result<DecodedText, TextError> {
  if (bytes.length === 0) return failed({ kind: 'empty' });
  const mark = byteOrderMarks.find(({ bytes: start }) =>
    start.every((byte, at) => bytes[at] === byte),
  );
  const rest = mark ? bytes.subarray(mark.bytes.length) : bytes;
  if (rest.length === 0) return failed({ kind: 'empty' });
  const wide = mark ? mark.encoding : zeroPattern(bytes);
  if (wide === 'utf-16le' || wide === 'utf-16be')
    return decodeWide(bytes, mark ? 2 : 0, wide, decode);

  const looksLike = mark ? null : binaryLookOf(bytes);
  if (looksLike) return failed({ kind: 'binary', looksLike, position: 0 });
  const scan = scanBytes(rest);
  if (scan.controlAt !== null) {
    const position = scan.controlAt + bytes.length - rest.length;
    return failed({ kind: 'binary', looksLike: 'unknown', position });
  }
  if (scan.isCutUtf8) return failed({ kind: 'cut-short' });
  const encoding = scan.isUtf8 ? 'utf-8' : 'windows-1252';
  return ok({ text: withoutEndMark(decode(rest, encoding)), encoding, isGuess: !scan.isUtf8 });
}

const byteOrderMarks: readonly {
  readonly bytes: readonly number[];
  readonly encoding: TextEncoding;
}[] = [
  { bytes: [0xef, 0xbb, 0xbf], encoding: 'utf-8' },
  { bytes: [0xff, 0xfe], encoding: 'utf-16le' },
  { bytes: [0xfe, 0xff], encoding: 'utf-16be' },
];

function decodeWide(
  bytes: Uint8Array,
  start: 0 | 2,
  encoding: 'utf-16le' | 'utf-16be',
  decode: DecodeBytes,
): Result<DecodedText, TextError> {
  if (bytes.length % 2 !== 0) return failed({ kind: 'cut-short' });
  const low = encoding === 'utf-16le' ? 0 : 1;
  for (let at = start; at < bytes.length; at += 2) {
    if (bytes[at + 1 - low] !== 0) continue;
    const unit = bytes[at + low]!;
    if (unit < 0x09 || (unit > 0x0d && unit < 0x20)) {
      return failed({ kind: 'binary', looksLike: 'unknown', position: at });
    }
  }
  return ok({ text: decode(bytes.subarray(start), encoding), encoding, isGuess: start === 0 });
}

/**
 * Text in Western letters has a zero in every other byte when it is UTF-16: in nearly all of one
 * kind of place and nearly none of the other. The first bytes are enough to see it.
 */
function zeroPattern(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  const pairs = Math.floor(Math.min(bytes.length, 4096) / 2);
  if (pairs < 2) return null;
  let evenZeros = 0;
  let oddZeros = 0;
  for (let pair = 0; pair < pairs; pair += 1) {
    if (bytes[2 * pair] === 0) evenZeros += 1;
    if (bytes[2 * pair + 1] === 0) oddZeros += 1;
  }
  if (oddZeros >= 0.8 * pairs && evenZeros <= 0.02 * pairs) return 'utf-16le';
  return evenZeros >= 0.8 * pairs && oddZeros <= 0.02 * pairs ? 'utf-16be' : null;
}

const withoutEndMark = (text: string): string => (text.endsWith('\x1a') ? text.slice(0, -1) : text);

export type TextError =
  | { readonly kind: 'empty' | 'cut-short' }
  | {
      readonly kind: 'binary';
      readonly looksLike: BinaryLook;
      /** How many bytes stand before the first one that no text has. */
      readonly position: number;
    };
