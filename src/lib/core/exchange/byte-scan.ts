/** What a look through all the bytes of a file found. */
export interface ByteScan {
  /** Where the first byte stands that no text has, or null: NUL and other control bytes. */
  readonly controlAt: number | null;
  /** Whether the bytes are UTF-8 from end to end. */
  readonly isUtf8: boolean;
  /** UTF-8 with letters beyond ASCII, all right until a last character that is cut in two. */
  readonly isCutUtf8: boolean;
}

/**
 * Looks through bytes once, for what tells text from other data and UTF-8 from older encodings.
 * Tab, line breaks, vertical tab and form feed are text; so is the end mark 0x1A of old programs
 * as the last byte. Source for well-formed UTF-8: The Unicode Standard, table 3-7.
 * @example
 * scanBytes(Uint8Array.from([0x61, 0x00])).controlAt // => 1
 * scanBytes(Uint8Array.from([0xc3, 0xa9])).isUtf8 // => true
 * scanBytes(Uint8Array.from([0xe9, 0x0a])).isUtf8 // => false
 */
export function scanBytes(bytes: Uint8Array): ByteScan {
  let controlAt: number | null = null;
  let isUtf8 = true;
  let isCut = false;
  let hasWide = false;
  let at = 0;
  while (at < bytes.length) {
    const byte = bytes[at]!;
    if (byte < 0x80) {
      if (controlAt === null && isControl(byte) && !(byte === 0x1a && at === bytes.length - 1)) {
        controlAt = at;
      }
      at += 1;
      continue;
    }
    const length = isUtf8 ? wideLength(bytes, at) : 1;
    if (length === 'cut') isCut = true;
    if (typeof length === 'string') isUtf8 = false;
    else if (isUtf8) hasWide = true;
    at += typeof length === 'string' ? 1 : length;
  }
  return { controlAt, isUtf8, isCutUtf8: isCut && hasWide };
}

const isControl = (byte: number): boolean =>
  (byte < 0x20 && (byte < 0x09 || byte > 0x0d)) || byte === 0x7f;

/** How many bytes the character beyond ASCII at this place has, if it is well formed. */
function wideLength(bytes: Uint8Array, at: number): 2 | 3 | 4 | 'cut' | 'bad' {
  const first = bytes[at]!;
  const length = first >= 0xf0 ? 4 : first >= 0xe0 ? 3 : 2;
  if (first < 0xc2 || first > 0xf4) return 'bad';
  for (let step = 1; step < length; step += 1) {
    const next = bytes[at + step];
    if (next === undefined) return 'cut';
    if (next < (step === 1 ? leastSecond(first) : 0x80)) return 'bad';
    if (next > (step === 1 ? greatestSecond(first) : 0xbf)) return 'bad';
  }
  return length;
}

const leastSecond = (first: number): number =>
  first === 0xe0 ? 0xa0 : first === 0xf0 ? 0x90 : 0x80;
const greatestSecond = (first: number): number =>
  first === 0xed ? 0x9f : first === 0xf4 ? 0x8f : 0xbf;
