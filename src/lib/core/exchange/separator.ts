export const separators = [',', ';', '\t', '|'] as const;

/** What stands between the fields of a record. */
export type Separator = (typeof separators)[number];

/**
 * Which separator a table file uses: the one that stands outside quotes equally often in nearly
 * every record. Where several do, tab, semicolon and bar win over the comma, which may be a
 * decimal comma. A first line `sep=;` says it outright. A file of one column has none to find,
 * and any will do: the comma. (Common practice, no source.)
 * @example
 * detectSeparator('day;cm\n1.3.2026;2,5\n') // => ';'
 * detectSeparator('day,note\n2026-03-01,"wet; cold; dark"\n') // => ','
 */
export function detectSeparator(text: string): Separator {
  const said = declaredSeparator(text);
  if (said) return said.separator;
  const records = countRecords(text);
  const ranked = [...preferred]
    .map((separator) => ({ separator, share: steadyShare(records, separator) }))
    .filter(({ share }) => share > 0)
    .sort((left, right) => Number(right.share > 0.9) - Number(left.share > 0.9));
  const best = ranked[0];
  if (!best) return ',';
  if (best.share > 0.9) return best.separator;
  return ranked.reduce((most, each) => (each.share > most.share ? each : most)).separator;
}

/**
 * The separator named by a first line `sep=;`, as some spreadsheets write it, and how many
 * characters that line takes up; null where there is no such line.
 * @example
 * declaredSeparator('sep=;\nday;cm') // => { separator: ';', length: 6 }
 * declaredSeparator('day;cm') // => null
 */
export function declaredSeparator(text: string): Declared | null {
  const said = /^\ufeff?sep=([,;\t|])(?:\r\n|\r|\n|$)/i.exec(text.slice(0, 10));
  return said ? { separator: said[1] as Separator, length: said[0].length } : null;
}

interface Declared {
  readonly separator: Separator;
  readonly length: number;
}

const preferred: readonly Separator[] = ['\t', ';', '|', ','];
const sampleLength = 65_536;
const sampleRecords = 200;

type Counts = Readonly<Record<Separator, number>>;

/** How often each separator stands outside quotes, in each of the first records with text. */
function countRecords(text: string): readonly Counts[] {
  const end = Math.min(text.length, sampleLength);
  const records: Counts[] = [];
  let counts = noCounts();
  let quoted = false;
  let hasText = false;
  const close = () => {
    if (hasText) records.push(counts);
    counts = noCounts();
    hasText = false;
  };
  for (let at = 0; at < end && records.length < sampleRecords; at += 1) {
    const character = text[at]!;
    if (character === '"') quoted = !quoted;
    else if (quoted) continue;
    else if (character === '\n' || character === '\r') close();
    else if (isSeparator(character)) counts[character] += 1;
    if (character !== '\n' && character !== '\r') hasText = true;
  }
  // A last record that the sample cuts in two says nothing.
  if (end === text.length) close();
  return records;
}

const noCounts = (): Record<Separator, number> => ({ ',': 0, ';': 0, '\t': 0, '|': 0 });
const isSeparator = (character: string): character is Separator =>
  (separators as readonly string[]).includes(character);

/** The share of records that hold this separator as often as the first record does. */
function steadyShare(records: readonly Counts[], separator: Separator): number {
  const expected = records[0]?.[separator] ?? 0;
  if (expected === 0) return 0;
  return records.filter((counts) => counts[separator] === expected).length / records.length;
}
