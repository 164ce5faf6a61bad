import { readFileSync } from 'node:fs';

/** A file of checked values, with its source inside or in the test that uses it. */
export const referenceText = (name: string): string =>
  readFileSync(new URL(`../../reference/${name}`, import.meta.url), 'utf8');

export const fileOf = (content: string | Uint8Array<ArrayBuffer>, name: string): File =>
  new File([content], name);

/** Bytes that no text has. */
export const noise = (length: number): Uint8Array<ArrayBuffer> =>
  Uint8Array.from({ length }, (_, place) => (place * 73) % 256);
