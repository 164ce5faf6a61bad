import { describe, expect, test } from 'vitest';
import { readDayText } from '#core/calendar';
import { guessColumns, previewImport, readCsv, type Refusal } from '#core/exchange';
import { parseMeasured } from '#core/measure';
import {
  addedUpWords,
  monthWords,
  outcomeCountWords,
  refusalWords,
  rowContentWords,
  tableSpanWords,
  toComeWords,
  whyNotInWords,
} from '../../../src/lib/ui/records-words/table-words';
import { likelyQuantity } from '../../../src/lib/ui/records/likely-quantity';

const preview = (text: string) => {
  const read = readCsv(text);
  if (!read.ok) throw new Error('Not a table');
  const { mapping } = guessColumns(read.value.rows, read.value.separator);
  return previewImport(read.value.rows, mapping, null);
};

describe('why a row does not come in', () => {
  const cases: readonly (readonly [string, string])[] = [
    ['3/9/26,4', '“3/9/26”: the year needs four digits'],
    ['2026-02-31,4', 'there is no day “2026-02-31”'],
    ['Tuesday 2 March 2026,4', '“Tuesday 2 March 2026”: that was Monday 2 March 2026'],
    ['1850-01-01,4', '“1850-01-01”: years from 1900 to 2199 can be kept'],
    ['someday,4', '“someday” is not a day'],
    [',4', 'has no day'],
    ['2026-03-03,-2', '“-2” is below 0'],
    ['2026-03-03,1.23456', '“1.23456” falls between all marks of its unit'],
    ['2026-03-03,4 furlongs', '“4 furlongs”: the unit is not known here'],
    ['2026-03-03,tall', '“tall” is neither a number nor a state that is known here'],
    ['2026-03-03,3,5', 'has 3 columns where the first row has 2'],
    ['2026-03-03', 'has 1 column where the first row has 2'],
  ];

  test.each(cases)('%s', (row, words) => {
    const { rows } = preview(`day,cm\n2026-03-02,3\n${row}\n`);
    expect(whyNotInWords(rows[2]!)).toBe(words);
  });

  test('a date that is a day either way names both days', () => {
    const read = readDayText('3/4/2026');
    if (read.ok) throw new Error('It should be open');
    const refusal: Refusal = { kind: 'day', read: '3/4/2026', error: read.error };
    expect(refusalWords(refusal)).toMatch(/Friday 3 April 2026 or Wednesday 4 March 2026/);
  });

  test('every reason has words of its own', () => {
    const reasons: readonly Refusal[] = [
      { kind: 'text-after-quote', field: 0 },
      { kind: 'no-unit' },
      { kind: 'no-word' },
      { kind: 'day-number', read: '7.5' },
      { kind: 'time', read: '25:00', error: { kind: 'no-such-time', text: '25:00' } },
      { kind: 'state-beside-number', read: '4', state: 'missed' },
      { kind: 'unit', read: 'miles' },
      { kind: 'disagrees', read: '4', exactly: '5' },
      { kind: 'too-long', field: 'note', most: 4000 },
    ];
    const words = reasons.map(refusalWords);
    expect(new Set(words).size).toBe(reasons.length);
    for (const each of words) expect(each).not.toMatch(/undefined|null|NaN|wrong|error|invalid/i);
  });
});

describe('what a row brings in', () => {
  test('is told with everything that stands beside it', () => {
    const { rows } = preview('day,cm,leaves,weather,note\n2026-03-02,3,4,sunny,bent\n');
    expect(rowContentWords(rows[1]!.what!)).toBe('3 cm; 4 leaves; sun; bent');
  });

  test('is a state where there is no number', () => {
    const { rows } = preview('day,cm\n2026-03-02,3\n2026-03-03,\n2026-03-04,not up yet\n');
    expect(rows.slice(2).map(({ what }) => rowContentWords(what!))).toEqual([
      'missed',
      'not up yet',
    ]);
  });
});

test('outcomes are counted in words, those with none left out', () => {
  const { countByOutcome } = preview('day,cm\n2026-03-02,3\n2026-03-03,tall\n');
  expect(outcomeCountWords(countByOutcome)).toEqual([
    '1 with a number',
    '1 passed over: headings, blank rows, rows of another',
    '1 that cannot be read',
  ]);
});

test('days and numbers are told from the first to the last', () => {
  const measured = (text: string) => {
    const read = parseMeasured(text, { unit: 'cm' });
    if (!read.ok) throw new Error(text);
    return read.value;
  };
  const [first, last] = ['2026-03-02', '2026-03-09'] as never[];
  const range = { least: measured('3'), greatest: measured('9.5') };
  expect(tableSpanWords({ first: first!, last: last! }, range)).toBe(
    'From Monday 2 March 2026 to Monday 9 March 2026; the numbers go from 3 cm to 9.5 cm.',
  );
  expect(tableSpanWords({ first: first!, last: first! }, null)).toBe('On Monday 2 March 2026.');
  expect([toComeWords(1), toComeWords(12)]).toEqual([
    'One of these days has not come yet. Is that right?',
    '12 of these days have not come yet. Is that right?',
  ]);
  expect(monthWords('2012-02')).toBe('February 2012');
});

test('amounts that are added up keep their last noughts', () => {
  // 1226 mm is 48.2677 in (tests/reference/rain.json, 2012); 0 stays 0.
  expect(addedUpWords(1_226_000_000)).toEqual({ mm: '1226.0', inches: '48.27' });
  expect(addedUpWords(0)).toEqual({ mm: '0.0', inches: '0.00' });
});

describe('what a table most likely measures', () => {
  const numbers = { columnByField: { day: 0, number: 1 } };
  test.each([
    [['date', 'precipitation_mm'], 'rain'],
    [['day', 'shadow length (cm)'], 'shadow'],
    [['day', 'plantHeight'], 'plant-height'],
    [['day', 'cm'], 'length'],
  ] as const)('%j is %s', (headings, quantity) => {
    expect(likelyQuantity(numbers, headings, null)).toBe(quantity);
  });

  test('is told by the name of a series too, and by words in the place of numbers', () => {
    const name = { investigation: '', specimen: 'Sunflower' };
    expect(likelyQuantity(numbers, ['x', 'y'], name)).toBe('plant-height');
    expect(likelyQuantity({ columnByField: { day: 0, word: 1 } }, ['a', 'b'], null)).toBe(
      'daily-kind',
    );
  });
});
