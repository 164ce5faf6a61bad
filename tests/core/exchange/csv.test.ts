import { csvParseRows } from 'd3-dsv';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  detectSeparator,
  readCsv,
  readCsvInSlices,
  separators,
  unguardText,
  guardText,
  writeCsv,
} from '#core/exchange';
import { referenceJson } from './files';

interface Cases {
  readonly parse: readonly { id: string; text: string; rows: string[][] }[];
  readonly invalid: readonly { text: string; why: string }[];
  readonly write: readonly (readonly [string[], string])[];
}

/** RFC 4180 (2005) section 2; every case agrees with two other readers (see the file). */
const cases = referenceJson<Cases>('csv.json');

const fieldsOf = (text: string, separator?: ','): unknown => {
  const read = readCsv(text, separator ? { separator } : {});
  return read.ok ? read.value.rows.map(({ fields }) => fields) : read.error;
};

describe('reading a table', () => {
  test.each(cases.parse)('X5 $id', ({ text, rows }) => {
    const read = readCsv(text);
    expect(read.ok && read.value.rows.map(({ fields }) => fields)).toEqual(rows);
    expect(read.ok && read.value.rows.map(({ problem }) => problem)).toEqual(rows.map(() => null));
  });

  const told: Record<string, unknown> = {
    'unclosed quote': { kind: 'open-quote', row: 2, line: 2 },
    'text after closing quote': { kind: 'text-after-quote', field: 0 },
    'quote inside unquoted field (ABNF TEXTDATA excludes DQUOTE)': {
      kind: 'quote-inside',
      field: 0,
    },
    'ragged row (rule 4: same number of fields)': { kind: 'ragged', expected: 2, found: 1 },
  };
  test.each(cases.invalid)('X7 $why is told', ({ text, why }) => {
    const read = readCsv(text);
    expect(read.ok ? read.value.rows[1]?.problem : read.error).toEqual(told[why]);
  });

  test('X7 what is odd is read all the same', () => {
    expect(fieldsOf('h,n\n3 1/2",a\n"x"y,b\n1\n1,2,3\n')).toEqual([
      ['h', 'n'],
      ['3 1/2"', 'a'],
      ['xy', 'b'],
      ['1'],
      ['1', '2', '3'],
    ]);
  });

  test('X7 an open quote names the line it was opened on, behind fields of several lines', () => {
    const read = readCsv('a,b\n"one\ntwo\r\nthree",1\nx,"open\nto the end');
    expect(read).toEqual({ ok: false, error: { kind: 'open-quote', row: 3, line: 5 } });
  });

  test('X6 each record knows which it is and where it begins', () => {
    const read = readCsv('a\r"b\r\nb"\n\n"c\rc"\r\nd');
    const places = read.ok && read.value.rows.map(({ row, line }) => [row, line]);
    expect(places).toEqual([
      [1, 1],
      [2, 2],
      [3, 4],
      [4, 5],
      [5, 7],
    ]);
  });

  test('X5 a blank line is a record of one empty field, and not ragged', () => {
    const read = readCsv('a,b\n\n1,2\n');
    expect(read.ok && read.value.rows[1]).toEqual({ fields: [''], row: 2, line: 2, problem: null });
  });

  test('X5 a file of nothing, or of a mark alone, is empty', () => {
    expect(readCsv('')).toEqual({ ok: false, error: { kind: 'empty' } });
    expect(readCsv('\ufeff')).toEqual({ ok: false, error: { kind: 'empty' } });
    expect(readCsv('sep=;\r\n')).toEqual({ ok: false, error: { kind: 'empty' } });
  });

  test('X7 more records than may be read are refused before memory runs out', () => {
    expect(readCsv('a\nb\nc\n', { mostRows: 2 })).toEqual({
      ok: false,
      error: { kind: 'too-many-rows', most: 2 },
    });
    expect(readCsv('a\nb\nc\n', { mostRows: 3 }).ok).toBe(true);
  });

  const anyField = fc.string({ unit: fc.constantFrom(...'ab1, ;\t"\r\n\'é🌱') });
  const anyTable = fc.array(fc.array(anyField, { minLength: 1, maxLength: 4 }), { minLength: 1 });

  test('X5 what another reader makes of well-formed text, we do too', () => {
    // The outside judge is d3-dsv 3.0, which reads commas and knows no byte order mark. It drops
    // nothing and adds nothing for tables whose last record is not a single empty field.
    fc.assert(
      fc.property(anyTable, (rows) => {
        fc.pre(rows.at(-1)!.join('') !== '');
        const text = writeCsv(rows).slice(1);
        expect(fieldsOf(text, ',')).toEqual(csvParseRows(text));
      }),
      { seed: 21, numRuns: 1000 },
    );
  });

  test('X10 what we write reads back as the same fields', () => {
    fc.assert(
      fc.property(anyTable, (rows) => {
        expect(fieldsOf(writeCsv(rows), ',')).toEqual(rows);
      }),
      { seed: 22, numRuns: 1000 },
    );
  });

  test('X9 slices of any length read the same, and report progress to the end', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom(...'a,;"\r\n') }),
        fc.nat(9),
        (text, length) => {
          const reading = readCsvInSlices(text, { separator: ',', sliceLength: length });
          const reports: number[] = [];
          let step = reading.next();
          for (; !step.done; step = reading.next()) reports.push(step.value.charactersRead);
          expect(step.value).toEqual(readCsv(text, { separator: ',' }));
          expect(reports).toEqual([...reports].sort((left, right) => left - right));
          if (step.value.ok) expect(reports.at(-1)).toBe(text.length);
        },
      ),
      { seed: 23, numRuns: 1000 },
    );
  });

  test('X5 reading leaves no character out and adds none', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...'ab,;x\r\n') }), (text) => {
        const read = readCsv(text, { separator: ',' });
        const kept = read.ok ? read.value.rows.flatMap(({ fields }) => fields).join('') : '';
        expect(kept).toBe(text.replace(/[,\r\n]/g, ''));
      }),
      { seed: 24, numRuns: 1000 },
    );
  });
});

describe('the separator', () => {
  test.each([
    ['day,cm\n2026-03-01,3\n', ','],
    ['day;cm\n1.3.2026;2,5\n2.3.2026;3,0\n', ';'],
    ['1.3.2026;2,5\n2.3.2026;3,0\n', ';'],
    ['day\tcm\n1 Mar 2026\t2,5\n', '\t'],
    ['day|cm|note\n2026-03-01|2.5|wet; cold\n', '|'],
    ['day,note\n2026-03-01,"wet; cold; dark"\n2026-03-02,"a;b"\n', ','],
    ['day,cm,note\n2026-03-01,3,a; b\n2026-03-02,4,\n2026-03-03,4\n', ','],
    [`${'1.3.2026;2,5\n'.repeat(20)}in all 50,0\n`, ';'],
    ['height\n3\n4\n', ','],
    ['', ','],
    ['sep=|\na|b,c|d,e\n', '|'],
  ] as const)('X8 of %j is %j', (text, separator) => {
    expect(detectSeparator(text)).toBe(separator);
  });

  test('X8 a line that only names the separator is no record', () => {
    const read = readCsv('sep=;\r\nday;cm\r\n2 May;3,5\r\n');
    expect(read.ok && read.value.rows).toEqual([
      { fields: ['day', 'cm'], row: 1, line: 2, problem: null },
      { fields: ['2 May', '3,5'], row: 2, line: 3, problem: null },
    ]);
  });

  test('X8 is found again in every table joined with it, if its fields hold none of the others', () => {
    const field = fc.string({ unit: fc.constantFrom(...'ab12 .'), minLength: 1 });
    const tables = fc
      .integer({ min: 2, max: 5 })
      .chain((width) =>
        fc.array(fc.array(field, { minLength: width, maxLength: width }), { minLength: 1 }),
      );
    fc.assert(
      fc.property(tables, fc.constantFrom(...separators), (rows, separator) => {
        const text = rows.map((fields) => fields.join(separator)).join('\n');
        expect(detectSeparator(text)).toBe(separator);
      }),
      { seed: 25, numRuns: 300 },
    );
  });
});

describe('text that a spreadsheet might run', () => {
  test.each(cases.write)('X10 %j survives writing and reading', (fields) => {
    expect(fieldsOf(writeCsv([fields]), ',')).toEqual([fields]);
  });

  test('X11 gets an apostrophe, and numbers do not', () => {
    // OWASP, "CSV Injection" (from memory): = + - @, tab and carriage return begin a formula.
    const [dangers] = cases.write[0]!;
    expect(dangers.map(guardText)).toEqual(["'=1+1", "'@x", '-3', '+4']);
    expect(guardText('\t=1')).toBe("'\t=1");
    expect(guardText(' =1')).toBe("' =1");
    expect(guardText('-1+cmd|x')).toBe("'-1+cmd|x");
    expect(guardText("it's 3 cm")).toBe("it's 3 cm");
  });

  test('X11 is given back by reading, whatever it was', () => {
    const nasty = fc.string({ unit: fc.constantFrom(..."'=+-@ \t\r1a＝") });
    fc.assert(
      fc.property(nasty, (text) => {
        expect(unguardText(guardText(text))).toBe(text);
        expect(guardText(text)).not.toMatch(/^[=@\t\r]|^[+-](?!\d+([.,]\d+)?$)/);
      }),
      { seed: 26, numRuns: 2000 },
    );
  });
});
