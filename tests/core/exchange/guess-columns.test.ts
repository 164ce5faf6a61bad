import { describe, expect, test } from 'vitest';
import { guessColumns, specimensInTable, unitInHeading } from '#core/exchange';
import { referenceText, table } from './files';

const guess = (text: string) => {
  const { mapping, questions } = table(text);
  return { ...mapping, questions };
};

describe('the guess of what a table holds', () => {
  test('X14 knows the day, the number, its unit and the weather of a rain table', () => {
    // tests/reference/rain_seattle.csv: NOAA, by way of npm vega-datasets 3.2.1.
    expect(guess(referenceText('rain_seattle.csv'))).toMatchObject({
      columnByField: { day: 0, number: 1, weather: 2 },
      hasHeading: true,
      days: { as: 'date', order: null },
      unit: 'mm',
      decimal: 'point',
      questions: [],
    });
  });

  test('X14 knows numbered days, a column of units and the specimens of a growth table', () => {
    const { rows, mapping, questions } = table(referenceText('growth.csv'));
    expect(mapping).toMatchObject({
      columnByField: { specimen: 0, unit: 2, day: 3, number: 4 },
      days: { as: 'number', anchor: null },
    });
    expect(questions).toEqual(['date-of-a-day', 'which-specimen']);
    const specimens = specimensInTable(rows, mapping);
    expect(specimens).toHaveLength(19);
    expect(specimens[0]).toMatchObject({ specimen: mapping.only?.specimen, rowCount: 12 });
  });

  test.each([
    ['Date,Height (cm),Note\n2026-03-02,3,first leaf\n', { day: 0, number: 1, note: 2 }, 'cm'],
    ['Plant;Datum;Height in\nBean A;2.3.2026;4 1/2\n', { specimen: 0, day: 1, number: 2 }, 'in'],
    [
      'day,state,rain_mm\n2026-03-02,missed,\n2026-03-03,,4\n',
      { day: 0, state: 1, number: 2 },
      'mm',
    ],
    [
      'day,time,shadow cm,leaves\n2026-03-02,9:00,80,3\n',
      { day: 0, time: 1, number: 2, leaves: 3 },
      'cm',
    ],
    ['year,month,date,value\n2026,3,2026-03-02,12 mm\n', { day: 2, number: 3 }, 'mm'],
    ['day,rain (in),span days\n2026-03-02,0.5,3\n', { day: 0, number: 1, 'span-days': 2 }, 'in'],
    ['id,date,height_cm\n1,2026-03-02,3\n2,2026-03-03,4\n', { day: 1, number: 2 }, 'cm'],
    ['2026-03-02,3\n2026-03-03,4\n', { day: 0, number: 1 }, null],
  ])('X14 of %j finds the columns', (text, columnByField, unit) => {
    expect(guess(text)).toMatchObject({ columnByField, unit });
    expect(Object.keys(guess(text).columnByField)).toHaveLength(Object.keys(columnByField).length);
  });

  test('X14 takes a column of kinds for the day’s word where there is no number', () => {
    expect(guess('date,weather\n2026-03-02,rain\n')).toMatchObject({
      columnByField: { day: 0, word: 1 },
      questions: [],
    });
  });

  test('X14 guesses only the rest where a person has chosen the columns', () => {
    const { rows } = table('date,leaf_mm,sown\n9/3/2026,41,14/2/2026\n');
    const places = { columnByField: { day: 2, number: 1 }, hasHeading: true };
    expect(guessColumns(rows, ',', places)).toMatchObject({
      mapping: { ...places, unit: 'mm', days: { as: 'date', order: 'day-first' } },
      questions: [],
    });
  });

  test('X14 tells a table without a heading', () => {
    expect(guess('2026-03-02,3\n').hasHeading).toBe(false);
    expect(guess('day,cm\n2026-03-02,3\n').hasHeading).toBe(true);
  });

  test.each([
    ['day,cm\n3/9/2026,5\n3/14/2026,6\n', 'month-first', []],
    ['day,cm\n3/9/2026,5\n14/3/2026,6\n', 'day-first', []],
    ['day,cm\n3/9/2026,5\n4/9/2026,6\n', null, ['day-order']],
    ['day,cm\n3/9/2026,5\n14/3/2026,6\n3/14/2026,6\n', null, ['day-order']],
    ['day,cm\n3/3/2026,5\n4/4/2026,6\n', null, []],
  ])('X15 the order of the days in %j is told or asked', (text, order, questions) => {
    expect(guess(text)).toMatchObject({ days: { as: 'date', order }, questions });
  });

  test('X15 a day far down the table settles the order', () => {
    const early = Array.from({ length: 400 }, () => '3/9/2026,5\n').join('');
    expect(guess(`day,cm\n${early}3/31/2026,6\n`)).toMatchObject({
      days: { order: 'month-first' },
      questions: [],
    });
  });

  test.each([
    ['day;cm\n2.3.2026;4,5\n', 'comma', []],
    ['day;cm\n2.3.2026;4\n', 'comma', []],
    ['day;cm\n2.3.2026;4.5\n', 'point', []],
    ['day,cm\n2026-03-02,"4,5"\n', 'comma', []],
    ['day,cm\n2026-03-02,"1,234"\n', 'point', ['decimal']],
    ['day,cm\n2026-03-02,"4,5"\n2026-03-03,4.5\n', 'point', ['decimal']],
  ])('X15 the decimal sign in %j is told or asked', (text, decimal, questions) => {
    expect(guess(text.replaceAll('2.3.2026', '2026-03-02'))).toMatchObject({ decimal, questions });
  });

  test('X15 what is missing is asked for', () => {
    expect(guess('a,b\nx,y\n').questions).toEqual([
      'which-column-is-the-day',
      'which-column-is-the-number',
    ]);
    expect(guess('day,height\n2026-03-02,3\n').questions).toEqual(['unit']);
  });

  test('X14 an empty list of rows is no crash', () => {
    expect(guess('\n').questions).toContain('which-column-is-the-day');
  });
});

test.each([
  ['precipitation_mm', 'mm'],
  ['height (cm)', 'cm'],
  ['Height in', 'in'],
  ['Height [Inches]', 'in'],
  ['heightCm', 'cm'],
  ['cm', 'cm'],
  ['Height (")', 'in'],
  ['rain/mm', 'mm'],
  ['Height, ft.', 'ft'],
  ['number of leaves', 'count'],
  ['height (tall one)', null],
  ['in the morning', null],
  ['date', null],
  ['', null],
])('X14 the unit in the heading %j is %s', (heading, unit) => {
  expect(unitInHeading(heading)).toBe(unit);
});
