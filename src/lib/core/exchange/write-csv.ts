/**
 * A table as CSV text by RFC 4180: commas, quotes where they are needed, and a line break behind
 * every record. It opens with a byte order mark, without which common spreadsheets take UTF-8 for
 * an older encoding. Control characters other than tab and line breaks would make the file
 * unreadable as text, and become the replacement character U+FFFD.
 * Source: RFC 4180 (2005) section 2.
 * @example
 * writeCsv([['day', 'note'], ['2026-03-02', 'wet, "windy"']]) // => '\ufeffday,note\r\n2026-03-02,"wet, ""windy"""\r\n'
 */
export const writeCsv = (rows: readonly (readonly string[])[]): string =>
  `\ufeff${rows.map((fields) => `${fields.map(writeField).join(',')}\r\n`).join('')}`;

function writeField(field: string): string {
  const text = field.replace(controls, '\ufffd');
  return needsQuotes.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

// eslint-disable-next-line no-control-regex -- these are the very characters to take out
const controls = /[\0-\x08\x0e-\x1f\x7f]/g;
const needsQuotes = /[",\r\n]|^sep=/i;
