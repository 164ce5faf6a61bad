import { failed, type Result } from '#core/base';
import { decodeText, type DecodedText, type TextError } from '#core/exchange';
import type { FileError } from '#ui/records-words';
import { breathe, readBytes, type Watch } from './in-slices';

/**
 * The text of a file, whatever it was saved by. A long file is looked into first: what is no text
 * is said at once, and a file beyond `mostBytes` is not read. Null when it was told to stop.
 */
export async function readTextFile(
  file: File,
  mostBytes: number,
  watch: Watch<number>,
): Promise<Result<DecodedText, FileError> | null> {
  try {
    const head = new Uint8Array(await file.slice(0, headBytes).arrayBuffer());
    const look = decode(head);
    if (!look.ok && look.error.kind === 'binary') return look;
    if (file.size > mostBytes) return failed({ kind: 'too-big', bytes: file.size, mostBytes });
    const bytes = file.size <= headBytes ? head : await readBytes(file, watch);
    if (bytes === null) return null;
    await breathe();
    return decode(bytes);
  } catch (thrown) {
    if (thrown instanceof DOMException) return failed({ kind: 'unreadable', detail: thrown.name });
    throw thrown;
  }
}

const decode = (bytes: Uint8Array): Result<DecodedText, TextError> =>
  decodeText(bytes, (part, encoding) => new TextDecoder(encoding).decode(part));

const headBytes = 64_000;
