import { describe, expect, test } from 'vitest';
import { paperTables, tableNeeds } from '../../../src/lib/ui/paper/paper-table';
import { blocksBySheet, tableBlocks } from '../../../src/lib/ui/paper/table-blocks';
import { countsTable, measuresTable, timesTable, valuesTable } from '../../core/graphs/golden-logs';

const inCm = ['cm', '1 cm'] as const;
const week = valuesTable('height', inCm, '2026-03-09', ['not-up-yet', '1', 'missed', null, '3']);
const beans = timesTable('height', inCm, '2026-03-09', {
  'Window bean': ['1', 'missed', '4'],
  'Shelf bean': [null, '2', '3'],
});
const rowsOf = (table: Parameters<typeof paperTables>[0]) => paperTables(table)[0].rows;

describe('the table on paper', () => {
  test('has a row for each kind with how many of it', () => {
    const weather = countsTable('days', { sun: 4, rain: 0 });
    expect(paperTables(weather)[0].head).toEqual(['Kind', 'How many days']);
    expect(rowsOf(weather)).toEqual([
      ['sun', '4'],
      ['rain', '0'],
    ]);
  });

  test('says in words why a day has no number, and never a nought for it', () => {
    expect(rowsOf(week)).toEqual([
      ...[
        ['Mon 9', 'not up yet'],
        ['Tue 10', '1'],
        ['Wed 11', 'missed'],
      ],
      ...[
        ['Thu 12', '–'],
        ['Fri 13', '3'],
      ],
    ]);
  });

  test('has every day of the calendar once, with a column for each plant', () => {
    expect(paperTables(beans)[0].head).toEqual(['When', 'Window bean (cm)', 'Shelf bean (cm)']);
    expect(rowsOf(beans)).toEqual([
      ['Mon 9', '1', '–'],
      ['Tue 10', 'missed', '2'],
      ['Wed 11', '4', '3'],
    ]);
  });

  test('of a line plot names the days that were not measured, after the measures', () => {
    const grown = {
      ...measuresTable('growth', inCm, ['2', '1']),
      unmeasured: [
        { label: 'Wed 18', state: 'missed' },
        { label: 'Thu 19', state: 'not-up-yet' },
        { label: 'Fri 20', state: 'blank' },
      ],
    } as const;
    expect(rowsOf(grown)).toEqual([
      ['number 1', '2'],
      ['number 2', '1'],
      ['Wed 18', 'missed'],
      ['Thu 19', 'not up yet'],
      ['Fri 20', 'no number'],
    ]);
  });

  test('of a line plot of two says whose each mark is, and a day both missed once', () => {
    const missed = { label: 'Wed 18', state: 'missed' } as const;
    const grown = {
      ...measuresTable('growth', inCm, ['2', ['1', 1]], ['Window bean', 'Shelf bean']),
      unmeasured: [missed, missed],
    };
    expect(rowsOf(grown)).toEqual([
      ['number 1', 'Window bean', '2'],
      ['number 2', 'Shelf bean', '1'],
      ['Wed 18', '', 'missed'],
    ]);
  });
});

describe('the two settings of a table', () => {
  test('say the same, and the narrow one takes less room across', () => {
    for (const table of [week, beans, countsTable('days', { sun: 4, rain: 3 })]) {
      const [roomy, narrow] = paperTables(table);
      expect([narrow.head, narrow.rows]).toEqual([roomy.head, roomy.rows]);
      expect(tableNeeds(narrow).blockMm).toBeLessThan(tableNeeds(roomy).blockMm);
    }
  });

  test('give a long name more lines, and the other rows none', () => {
    const [, narrow] = paperTables(
      countsTable('days', { 'a long name that nobody would shorten': 2, sun: 4 }),
    );
    // 30 mm hold 26 mm of letters, ten of them: "a long", "name that", "nobody", "would", "shorten".
    expect(narrow.linesByRow).toEqual([5, 1]);
    expect(tableNeeds(narrow).rows).toBe(6);
  });
});

const ruled = (linesByRow: readonly number[]) => ({
  ...paperTables(week)[0],
  ...{ linesByRow, rows: linesByRow.map((_, row) => [String(row)]) },
});
const namesIn = (blocks: readonly (readonly (readonly string[])[])[]) =>
  blocks.map((rows) => rows.map(([name]) => Number(name)));

describe('blocks of a table', () => {
  test('hold every row once, in order, as evenly as can be', () => {
    expect(namesIn(tableBlocks(ruled([1, 1, 1, 1, 1, 1, 1]), 3))).toEqual([
      [0, 1, 2],
      [3, 4, 5],
      [6],
    ]);
    expect(namesIn(tableBlocks(ruled([1, 1]), 5))).toEqual([[0], [1]]);
    expect(tableBlocks(ruled([]), 2)).toEqual([]);
  });

  test('are never more, nor longer, than the room that was reckoned for them', () => {
    const patterns = [[1], [2], [1, 1, 2], [3, 1, 1, 1], [1, 2, 1, 1, 3, 1, 1]];
    for (const pattern of patterns)
      for (const length of [1, 5, 12, 30])
        for (const blocks of [1, 2, 3, 4]) {
          const lines = Array.from({ length }, (_, row) => pattern[row % pattern.length]!);
          const made = namesIn(tableBlocks(ruled(lines), blocks));
          expect(made.flat()).toEqual(lines.map((_, row) => row));
          expect(made.length).toBeLessThanOrEqual(blocks);
          const needs = tableNeeds(ruled(lines));
          const roomMm =
            Math.ceil(needs.rows / blocks) * needs.rowMm + needs.headMm - ruled(lines).headMm;
          for (const rows of made) {
            const tallMm = rows.reduce((sum, row) => sum + lines[row]!, 0) * needs.rowMm;
            expect(tallMm).toBeLessThanOrEqual(roomMm + 1e-9);
          }
        }
  });

  test('go on over the next sheet where one does not hold them', () => {
    const sheets = blocksBySheet(ruled([1, 1, 1, 1, 1, 1, 1]), { blocks: 2, sheets: 2 });
    expect(sheets.map(namesIn)).toEqual([
      [
        [0, 1],
        [2, 3],
      ],
      [[4, 5], [6]],
    ]);
  });
});
