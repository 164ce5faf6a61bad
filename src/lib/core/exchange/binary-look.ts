/** What a file that is not text looks like, so that the face can say what to do instead. */
export type BinaryLook =
  'spreadsheet' | 'zip' | 'pdf' | 'picture' | 'sound-or-film' | 'compressed' | 'unknown';

/**
 * What the first bytes of a file are the signature of, or null for none that is known here.
 * A workbook is a zip archive; it is told from others by the name of its first part.
 * Sources: the formats' own specifications (PNG, JPEG, GIF, PDF, ZIP, gzip, compound file);
 * the list is a choice of what people drop by mistake.
 * @example
 * binaryLookOf(Uint8Array.from([0x25, 0x50, 0x44, 0x46, 0x2d])) // => 'pdf'
 * binaryLookOf(Uint8Array.from([0x64, 0x61, 0x79])) // => null
 */
export function binaryLookOf(bytes: Uint8Array): BinaryLook | null {
  const head = String.fromCharCode(...bytes.subarray(0, headLength));
  if (head.startsWith('PK\x03\x04')) return workbookPart.test(head) ? 'spreadsheet' : 'zip';
  const isLike = ({ parts }: Signature): boolean =>
    parts.every(([place, text]) => head.startsWith(text, place));
  return signatures.find(isLike)?.look ?? null;
}

const headLength = 128;

/** The names a workbook's archive begins with: Office Open XML, or OpenDocument. */
const workbookPart = /\[Content_Types\]\.xml|xl\/|_rels\/|opendocument\.spreadsheet/;

interface Signature {
  readonly look: BinaryLook;
  /** What stands where, in bytes from the start. */
  readonly parts: readonly (readonly [number, string])[];
}

const signatures: readonly Signature[] = [
  { look: 'spreadsheet', parts: [[0, '\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1']] },
  { look: 'zip', parts: [[0, 'PK\x05\x06']] },
  { look: 'zip', parts: [[0, 'PK\x07\x08']] },
  { look: 'pdf', parts: [[0, '%PDF-']] },
  { look: 'picture', parts: [[0, '\x89PNG\r\n\x1a\n']] },
  { look: 'picture', parts: [[0, '\xff\xd8\xff']] },
  { look: 'picture', parts: [[0, 'GIF8']] },
  {
    look: 'picture',
    parts: [
      [0, 'RIFF'],
      [8, 'WEBP'],
    ],
  },
  { look: 'picture', parts: [[4, 'ftyphei']] },
  { look: 'picture', parts: [[4, 'ftypmif1']] },
  { look: 'picture', parts: [[4, 'ftypavif']] },
  { look: 'sound-or-film', parts: [[4, 'ftyp']] },
  {
    look: 'sound-or-film',
    parts: [
      [0, 'RIFF'],
      [8, 'WAVE'],
    ],
  },
  {
    look: 'sound-or-film',
    parts: [
      [0, 'RIFF'],
      [8, 'AVI '],
    ],
  },
  { look: 'sound-or-film', parts: [[0, 'ID3\x02']] },
  { look: 'sound-or-film', parts: [[0, 'ID3\x03']] },
  { look: 'sound-or-film', parts: [[0, 'ID3\x04']] },
  { look: 'sound-or-film', parts: [[0, 'OggS\0']] },
  { look: 'compressed', parts: [[0, '\x1f\x8b']] },
  { look: 'compressed', parts: [[0, '7z\xbc\xaf\x27\x1c']] },
  { look: 'compressed', parts: [[0, 'Rar!\x1a\x07']] },
];
