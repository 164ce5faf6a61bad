import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeText } from '#core/exchange';
import { decode } from './files';

const text = 'day,note\r\n2026-03-02,Eloïse’s bean 🌱 3½ in\r\n';
const utf8 = new TextEncoder().encode(text);

function utf16(of: string, order: 'le' | 'be', withMark: boolean): Uint8Array {
  const units = [...(withMark ? [0xfeff] : []), ...[...of].flatMap((c) => unitsOf(c))];
  return Uint8Array.from(
    units.flatMap((unit) => {
      const pair = [unit & 0xff, unit >> 8];
      return order === 'le' ? pair : pair.reverse();
    }),
  );
}
const unitsOf = (character: string): number[] =>
  Array.from({ length: character.length }, (_, at) => character.charCodeAt(at));

describe('the text of a file', () => {
  test.each([
    ['UTF-8', utf8, 'utf-8', false],
    ['UTF-8 with a mark', Uint8Array.of(0xef, 0xbb, 0xbf, ...utf8), 'utf-8', false],
    ['UTF-16 LE with a mark', utf16(text, 'le', true), 'utf-16le', false],
    ['UTF-16 BE with a mark', utf16(text, 'be', true), 'utf-16be', false],
    ['UTF-16 LE without a mark', utf16(text, 'le', false), 'utf-16le', true],
    ['UTF-16 BE without a mark', utf16(text, 'be', false), 'utf-16be', true],
  ])('X1 %s is read, without a mark', (_, bytes, encoding, isGuess) => {
    expect(decodeText(bytes, decode)).toEqual({ ok: true, value: { text, encoding, isGuess } });
  });

  test('X1 any text survives UTF-8, with or without a mark', () => {
    const textual = fc
      .string({ unit: 'grapheme', minLength: 1 })
      .filter((any) => !hasControl(any) && !any.includes('\ufeff'));
    fc.assert(
      fc.property(textual, fc.boolean(), (any, withMark) => {
        const bytes = new TextEncoder().encode(withMark ? `\ufeff${any}` : any);
        const decoded = decodeText(bytes, decode);
        expect(decoded).toMatchObject({ ok: true, value: { text: any, isGuess: false } });
      }),
      { seed: 11, numRuns: 500 },
    );
  });

  test('X1 the platform agrees with us on what is UTF-8', () => {
    // The outside judge is the platform's decoder in its fatal mode (WHATWG Encoding).
    fc.assert(
      fc.property(fc.uint8Array({ min: 0x80, minLength: 1, maxLength: 6 }), (tail) => {
        const bytes = Uint8Array.of(0x61, ...tail, 0x62);
        const decoded = decodeText(bytes, decode);
        expect(decoded.ok && decoded.value.encoding === 'utf-8').toBe(isUtf8(bytes));
      }),
      { seed: 12, numRuns: 5000 },
    );
  });

  test('X1 the edges of each length of UTF-8 are told right', () => {
    // The Unicode Standard, table 3-7: first and last of each well-formed row, and their neighbours.
    const edges = [0x7f, 0x80, 0x8f, 0x90, 0x9f, 0xa0, 0xbf, 0xc0, 0xc1, 0xc2, 0xdf];
    edges.push(0xe0, 0xe1, 0xec, 0xed, 0xee, 0xef, 0xf0, 0xf1, 0xf3, 0xf4, 0xf5, 0xff);
    for (const first of edges.filter((byte) => byte >= 0xc0)) {
      for (const second of edges.filter((byte) => byte >= 0x80)) {
        for (const rest of [[], [0x80], [0x80, 0x80], [0xbf, 0xbf]]) {
          const bytes = Uint8Array.of(first, second, ...rest, 0x62);
          const decoded = decodeText(bytes, decode);
          expect(decoded.ok && decoded.value.encoding === 'utf-8', bytes.join()).toBe(
            isUtf8(bytes),
          );
        }
      }
    }
  });

  test('X2 bytes that are no UTF are read as the older Western encoding, as a guess', () => {
    const bytes = Uint8Array.of(0x48, 0xf6, 0x68, 0x65, 0x3b, 0x33, 0xbd);
    const value = { text: 'Höhe;3½', encoding: 'windows-1252', isGuess: true };
    expect(decodeText(bytes, decode)).toEqual({ ok: true, value });
  });

  test('X2 a last accented letter in the older encoding is not a file cut short', () => {
    const decoded = decodeText(Uint8Array.of(0x63, 0x61, 0x66, 0xe9), decode);
    expect(decoded).toMatchObject({ ok: true, value: { text: 'café', isGuess: true } });
  });

  test('X1 the end mark of old programs is not part of the text', () => {
    const decoded = decodeText(Uint8Array.of(0x61, 0x0a, 0x1a), decode);
    expect(decoded).toMatchObject({ ok: true, value: { text: 'a\n' } });
  });

  const bytesOf = (latin: string): Uint8Array =>
    Uint8Array.from({ length: latin.length }, (_, at) => latin.charCodeAt(at));

  // Signatures from the formats' own specifications (from memory).
  test.each([
    ['PK\x03\x04\x14\0\x06\0\x08\0\0\0!\0 [Content_Types].xml', 'spreadsheet'],
    ['PK\x03\x04\x14\0mimetypeapplication/vnd.oasis.opendocument.spreadsheet', 'spreadsheet'],
    ['\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1', 'spreadsheet'],
    ['PK\x03\x04\x14\0\0\0holiday.jpg', 'zip'],
    ['%PDF-1.7\n', 'pdf'],
    ['\x89PNG\r\n\x1a\n\0\0\0\rIHDR', 'picture'],
    ['\xff\xd8\xff\xe0\0\x10JFIF', 'picture'],
    ['GIF89a', 'picture'],
    ['RIFF\x24\0\0\0WEBPVP8 ', 'picture'],
    ['\0\0\0\x18ftypheic', 'picture'],
    ['\0\0\0\x18ftypisom', 'sound-or-film'],
    ['\x1f\x8b\x08\0', 'compressed'],
  ])('X3 %j is refused as %s', (start, looksLike) => {
    const decoded = decodeText(bytesOf(start), decode);
    expect(decoded).toEqual({ ok: false, error: { kind: 'binary', looksLike, position: 0 } });
  });

  test.each([0x00, 0x07, 0x1b, 0x7f])('X3 a control byte %i is refused where it stands', (byte) => {
    const error = { kind: 'binary', looksLike: 'unknown', position: 4 };
    const bytes = Uint8Array.of(0x64, 0x61, 0x79, 0x2c, byte, 0x63);
    expect(decodeText(bytes, decode)).toEqual({ ok: false, error });
    const behindMark = decodeText(Uint8Array.of(0xef, 0xbb, 0xbf, ...bytes), decode);
    expect(behindMark).toEqual({ ok: false, error: { ...error, position: 7 } });
  });

  test('X3 a control character in UTF-16 is refused where it stands', () => {
    const decoded = decodeText(utf16('day\0', 'le', true), decode);
    expect(decoded).toMatchObject({ ok: false, error: { kind: 'binary', position: 8 } });
  });

  test('X4 a file that ends inside a character was cut short', () => {
    const cut = utf8.slice(0, utf8.indexOf(0xf0) + 2);
    expect(decodeText(cut, decode)).toEqual({ ok: false, error: { kind: 'cut-short' } });
    const odd = utf16(text, 'le', true).slice(0, -1);
    expect(decodeText(odd, decode)).toEqual({ ok: false, error: { kind: 'cut-short' } });
  });

  test('X4 nothing but a mark, or nothing at all, is empty', () => {
    for (const bytes of [[], [0xef, 0xbb, 0xbf], [0xff, 0xfe], [0xfe, 0xff]]) {
      const decoded = decodeText(Uint8Array.from(bytes), decode);
      expect(decoded).toEqual({ ok: false, error: { kind: 'empty' } });
    }
  });
});

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

const hasControl = (text: string): boolean =>
  [...text].some(
    (character) => (character < ' ' && !'\t\n\v\f\r'.includes(character)) || character === '\x7f',
  );
