import { expect, test } from 'vitest';
import { checksumOf } from '../../../src/lib/core/exchange/checksum';

// Python 3 zlib.crc32 over the text encoded as UTF-16-LE.
test.each([
  ['123456789', 'a290e877'],
  ['Eloïse 🌱', '2cc859d7'],
  ['1 2026-03-02T08:00:00.000Z', '38f67f4f'],
])('X25 the checksum of %j is %s, as another program computes it', (text, checksum) => {
  expect(checksumOf([text])).toBe(checksum);
  expect(checksumOf(text.split(''))).toBe(checksum);
});
