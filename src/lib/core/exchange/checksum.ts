/**
 * A checksum of texts, to notice a file that was changed or damaged (not to prove who wrote it):
 * CRC-32 over their UTF-16 code units, low byte first, as eight hexadecimal digits. Every change
 * of one character, and every run of changes no longer than two, gives another checksum.
 * Source: CRC-32 of ISO 3309 and RFC 1952 section 8 (reflected polynomial 0xEDB88320).
 * @example
 * checksumOf(['']) // => '00000000'
 * checksumOf(['ab', 'c']) === checksumOf(['abc']) // => true
 */
export function checksumOf(texts: Iterable<string>): string {
  const table = crcTable();
  let crc = 0xffffffff;
  for (const text of texts) {
    for (let at = 0; at < text.length; at += 1) {
      const unit = text.charCodeAt(at);
      crc = (crc >>> 8) ^ table[(crc ^ unit) & 0xff]!;
      crc = (crc >>> 8) ^ table[(crc ^ (unit >>> 8)) & 0xff]!;
    }
  }
  return ((crc ^ 0xffffffff) >>> 0).toString(16).padStart(8, '0');
}

let made: Uint32Array | undefined;

function crcTable(): Uint32Array {
  made ??= Uint32Array.from({ length: 256 }, (_, byte) => {
    let crc = byte;
    for (let bit = 0; bit < 8; bit += 1) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
    return crc;
  });
  return made;
}
