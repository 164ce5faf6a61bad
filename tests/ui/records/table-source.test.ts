import { describe, expect, test } from 'vitest';
import { TableSource } from '../../../src/lib/ui/records/table-source.svelte';
import { fileOf, noise } from './files';

const refused = async (file: File) => {
  const source = new TableSource();
  expect(await source.choose(file)).toBeNull();
  if (source.stage.kind !== 'refused') throw new Error(`It was not refused: ${source.stage.kind}`);
  return source.stage.error;
};

describe('a file that is a table', () => {
  test('is read as UTF-16 with tabs, as a spreadsheet saves text', async () => {
    const text = '\ufeffdate\theight_cm\r\n2026-03-02\t3\r\n';
    const bytes = new Uint8Array(
      [...text].flatMap((letter) => [letter.charCodeAt(0) % 256, letter.charCodeAt(0) >> 8]),
    );
    const table = await new TableSource().choose(fileOf(bytes, 'a.txt'));
    expect(table?.separator).toBe('\t');
    expect(table?.rows[1]?.fields).toEqual(['2026-03-02', '3']);
  });

  test('is read with semicolons and a byte order mark', async () => {
    const table = await new TableSource().choose(fileOf('\ufeffTag;cm\n1.3.2026;2,5\n', 'a.csv'));
    expect(table?.rows[1]?.fields).toEqual(['1.3.2026', '2,5']);
    expect(table?.isGuessedText).toBe(false);
  });

  test('in an older encoding is read, and said to be a guess', async () => {
    const bytes = Uint8Array.from(
      [...'date,note\n2026-03-02,gr\u00fcn\n'].map((letter) => letter.charCodeAt(0)),
    );
    const table = await new TableSource().choose(fileOf(bytes, 'a.csv'));
    expect(table?.rows[1]?.fields[1]).toBe('grün');
    expect(table?.isGuessedText).toBe(true);
  });

  test('can be pasted instead', async () => {
    const table = await new TableSource().paste('2026-03-02\t3 cm\n2026-03-03\t3.5 cm');
    expect(table?.rows).toHaveLength(2);
  });
});

describe('a file that is none', () => {
  test('that is empty is said to be empty', async () => {
    expect(await refused(fileOf('', 'a.csv'))).toMatchObject({ kind: 'empty' });
  });

  test('that is a picture is told from its first bytes', async () => {
    const png = Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, ...noise(100)]);
    expect(await refused(fileOf(png, 'a.csv'))).toMatchObject({
      kind: 'binary',
      looksLike: 'picture',
    });
  });

  test('with a quotation mark that is never closed names the line', async () => {
    const error = await refused(fileOf('date,note\n2026-03-02,"wet\n2026-03-03,dry\n', 'a.csv'));
    expect(error).toEqual({ kind: 'open-quote', row: 2, line: 2 });
  });

  test('of more rows than anybody measures is refused', async () => {
    const file = fileOf('2026-03-02,3\n'.repeat(200_001), 'a.csv');
    expect(await refused(file)).toEqual({ kind: 'too-many-rows', most: 200_000 });
  });

  test('longer than can be read is refused before it is read', async () => {
    const file = fileOf('day,cm\n', 'a.csv');
    Object.defineProperty(file, 'size', { value: 100_000_000 });
    expect(await refused(file)).toMatchObject({ kind: 'too-big', bytes: 100_000_000 });
  });

  test('that is long and no text at all is told so, not that it is long', async () => {
    const file = fileOf(noise(70_000), 'a.csv');
    Object.defineProperty(file, 'size', { value: 100_000_000 });
    expect(await refused(file)).toMatchObject({ kind: 'binary' });
  });

  test('that the browser cannot read any more is refused kindly', async () => {
    const file = fileOf('day,cm\n', 'a.csv');
    file.slice = () =>
      ({
        arrayBuffer: () => Promise.reject(new DOMException('gone', 'NotFoundError')),
      }) as unknown as Blob;
    expect(await refused(file)).toEqual({ kind: 'unreadable', detail: 'NotFoundError' });
  });
});

test('a table that is stopped while it is read leaves nothing behind', async () => {
  const source = new TableSource();
  const reading = source.choose(fileOf('day,cm\n2026-03-02,3\n'.repeat(50_000), 'a.csv'));
  source.stop();
  expect(await reading).toBeNull();
  expect(source.stage).toEqual({ kind: 'none' });
});
