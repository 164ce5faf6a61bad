import { describe, expect, test } from 'vitest';
import { civilDay } from '#core/calendar';
import { seriesOf } from '#core/series';
import type { NotebookState } from '#notebook';
import { addedUpWords } from '../../../src/lib/ui/records-words/table-words';
import { ImportReview } from '../../../src/lib/ui/records/import-review.svelte';
import { TableSource } from '../../../src/lib/ui/records/table-source.svelte';
import { aNotebook } from './a-notebook';
import { fileOf, referenceText } from './files';

async function reviewOf(text: string, notebook?: NotebookState, name = 'table.csv') {
  const book = notebook ?? (await aNotebook());
  const table = await new TableSource().choose(fileOf(text, name));
  if (!table) throw new Error('The table was refused');
  const review = new ImportReview(table, book);
  await review.look();
  return { review, notebook: book };
}

/** tests/reference/rain.json: exact totals of the same days, cross-checked with R aggregate(). */
const rain = JSON.parse(referenceText('rain.json')) as {
  years: Record<
    string,
    {
      year: { total_mm: string; total_in_exact_2dp: string };
      months: { month: string; total_mm: string; total_in_exact_2dp: string }[];
    }
  >;
};

describe('three years of rain', () => {
  test('are taken for rain in millimetres, and nothing is left to ask', async () => {
    const { review } = await reviewOf(referenceText('rain_seattle.csv'));
    expect(review.openQuestions).toEqual([]);
    expect(review.target).toMatchObject({ kind: 'new', quantity: 'rain' });
    expect(review.facts).toMatchObject({
      comingIn: 1096,
      days: { first: '2012-01-01', last: '2014-12-31' },
      weekdays: [1, 2, 3, 4, 5, 6, 7],
    });
    expect(review.facts?.range?.greatest.text).toBe('54.1');
  });

  test('show each year and month with the checked totals, in mm and in inches', async () => {
    const { review } = await reviewOf(referenceText('rain_seattle.csv'));
    const { byYear, byMonth } = review.preview!.totals;
    const shown = byYear.map(({ year, exact }) => [String(year), addedUpWords(exact!)]);
    expect(shown).toEqual(
      Object.entries(rain.years).map(([year, checked]) => [
        year,
        {
          mm: Number(checked.year.total_mm).toFixed(1),
          inches: checked.year.total_in_exact_2dp,
        },
      ]),
    );
    expect(shown[0]).toEqual(['2012', { mm: '1226.0', inches: '48.27' }]);
    const months = Object.values(rain.years).flatMap((year) => year.months);
    expect(byMonth.map(({ month, exact }) => [month, addedUpWords(exact!)])).toEqual(
      months.map((each) => [
        each.month,
        { mm: Number(each.total_mm).toFixed(1), inches: each.total_in_exact_2dp },
      ]),
    );
  });

  test('come in as one investigation, and brought in again change nothing', async () => {
    const { review, notebook } = await reviewOf(referenceText('rain_seattle.csv'));
    await review.bringIn();
    expect(review.stage).toMatchObject({ kind: 'done', lineCount: 1096 });
    const [specimen] = [...notebook.contents.specimens.values()];
    expect(specimen).toMatchObject({ name: 'Our gauge', startedOn: '2012-01-01' });
    const series = seriesOf(notebook.contents, specimen!.id, notebook.today)!;
    expect(series.points).toHaveLength(1096);
    expect(series.investigation).toMatchObject({ quantity: 'rain', unit: 'mm', mark: '0.1 mm' });

    const again = await reviewOf(referenceText('rain_seattle.csv'), notebook);
    again.review.aim({ kind: 'existing', specimen: specimen!.id });
    await again.review.look();
    expect(again.review.preview?.countByOutcome['already-there']).toBe(1096);
    expect(again.review.facts?.comingIn).toBe(0);
    const before = notebook.entries.length;
    await again.review.bringIn();
    expect(notebook.entries).toHaveLength(before);
  });

  test('can be taken back in one go', async () => {
    const { review, notebook } = await reviewOf(referenceText('rain_seattle.csv'));
    await review.bringIn();
    await notebook.undo();
    expect(notebook.contents.investigations.size).toBe(0);
  });
});

/** tests/reference/growth.csv: Reed and Holland (1919), PNAS 5:135, mean height of 58 plants. */
describe('the sunflowers, whose days are only numbered', () => {
  test('wait for the date of a day, and then stand on the calendar', async () => {
    const { review } = await reviewOf(referenceText('growth.csv'));
    expect(review.unanswered).toEqual(['date-of-a-day']);
    expect(review.name?.specimen).toMatch(/^Sunflower/);
    expect(review.target).toMatchObject({ kind: 'new', quantity: 'plant-height' });
    expect(review.facts?.comingIn).toBe(0);
    review.change({ days: { as: 'number', anchor: { number: 7, day: civilDay('2026-05-08') } } });
    await review.look();
    expect(review.unanswered).toEqual([]);
    expect(review.facts).toMatchObject({
      comingIn: 12,
      days: { first: '2026-05-08', last: '2026-07-24' },
      weekdays: [5],
    });
    expect(review.facts?.range).toMatchObject({
      least: { text: '17.93' },
      greatest: { text: '254.50' },
    });
  });

  test('another series of the same table goes beside it, in the same investigation', async () => {
    const { review, notebook } = await reviewOf(referenceText('growth.csv'));
    review.change({ days: { as: 'number', anchor: { number: 7, day: civilDay('2026-05-08') } } });
    await review.look();
    await review.bringIn();
    const [investigation] = [...notebook.contents.investigations.keys()];
    const orange = review.specimens.find(({ specimen }) => specimen.startsWith('Orange'))!;
    review.change({ only: orange });
    await review.look();
    expect(review.stage).toEqual({ kind: 'open' });
    expect(review.target).toMatchObject({
      kind: 'new-specimen',
      investigation,
      specimenName: orange.specimen,
    });
  });
});

describe('what a table leaves open', () => {
  test('dates that are a day either way wait for the order, and no sure day is turned round', async () => {
    const { review } = await reviewOf('day,height (cm)\n3/4/2026,5\n5/4/2026,6\n');
    expect(review.unanswered).toEqual(['day-order']);
    expect(review.preview?.countByOutcome.refused).toBe(2);
    review.change({ days: { as: 'date', order: 'month-first' } });
    await review.look();
    expect(review.facts?.days).toEqual({ first: '2026-03-04', last: '2026-05-04' });
  });

  test('numbers without a unit wait for it', async () => {
    const { review } = await reviewOf('date,height\n2026-03-02,3\n2026-03-03,4\n');
    expect(review.unanswered).toEqual(['unit']);
    review.change({ unit: 'cm' });
    await review.look();
    expect(review.facts?.usual).toMatchObject({ unit: 'cm', mark: '1 cm' });
  });

  test('a table of which no column says anything brings in nothing, not missed days', async () => {
    const { review } = await reviewOf('2026-03-02,hello\n2026-03-03,you\n');
    review.putColumn('number', undefined);
    await review.look();
    expect(review.facts?.comingIn).toBe(0);
    expect(review.openQuestions).toContain('which-column-is-the-number');
  });

  test('choosing another number column takes that column’s unit', async () => {
    const { review } = await reviewOf('date,height_cm,leaf_mm\n2026-03-02,3,41\n');
    expect(review.mapping.unit).toBe('cm');
    review.putColumn('number', 2);
    await review.look();
    expect(review.facts?.range?.least).toMatchObject({ text: '41', unit: 'mm' });
  });

  test('words go into a log of words, with no unit asked for', async () => {
    const { review, notebook } = await reviewOf('date,sky\n2026-03-02,sun\n2026-03-03,rain\n');
    review.aim({
      ...{ kind: 'new', quantity: 'daily-kind', title: '', specimenName: '', origin: 'ours' },
    });
    review.putColumn('word', 1);
    await review.look();
    expect(review.openQuestions).toEqual([]);
    await review.bringIn();
    const [investigation] = [...notebook.contents.investigations.values()];
    expect(investigation).toMatchObject({ quantity: 'daily-kind', kinds: ['sun', 'rain'] });
  });
});

describe('into a log that is there', () => {
  const heights = 'date,height_cm\n2026-03-02,0\n2026-03-03,4\n2026-03-08,5\n2026-03-10,6\n';

  test('a height of 0 becomes "not up yet", and a day to come is counted', async () => {
    const { review } = await reviewOf(heights);
    expect(review.quantity).toBe('plant-height');
    expect(review.preview?.countByOutcome).toMatchObject({ state: 1, reading: 3 });
    expect(review.facts?.daysToCome).toBe(1);
    review.change({ zeroMeans: 'zero' });
    await review.look();
    expect(review.preview?.countByOutcome.reading).toBe(4);
  });

  test('a day with another number is told, and both numbers stay', async () => {
    const { review, notebook } = await reviewOf(heights);
    await review.bringIn();
    const [specimen] = [...notebook.contents.specimens.keys()];
    const other = await reviewOf('date,height_cm\n2026-03-03,4.5\n', notebook);
    other.review.aim({ kind: 'existing', specimen: specimen! });
    await other.review.look();
    expect(other.review.facts?.daysWithAnother).toBe(1);
    await other.review.bringIn();
    const log = notebook.contents.logBySpecimen.get(specimen!)!;
    expect(log.readings.filter(({ day }) => day === '2026-03-03')).toHaveLength(2);
  });

  test('practice numbers are marked as not ours, and nothing is said of how they were measured', async () => {
    const { review, notebook } = await reviewOf(heights);
    const { target } = review;
    if (target.kind !== 'new') throw new Error('Not a new investigation');
    review.rename({ ...target, origin: 'made-up', title: ' Theirs ' });
    await review.bringIn();
    expect([...notebook.contents.investigations.values()][0]).toMatchObject({
      ...{ origin: 'made-up', title: 'Theirs', where: '', tool: '', when: '' },
    });
  });

  test('what cannot be saved stays on the screen, to be tried again', async () => {
    const { review, notebook } = await reviewOf(heights);
    const { append } = notebook.store;
    notebook.store.append = () =>
      Promise.resolve({ ok: false, error: { kind: 'no-room', detail: '' } });
    await review.bringIn();
    expect(review.stage).toEqual({ kind: 'open' });
    expect(notebook.trouble).toMatchObject({ kind: 'no-room' });
    notebook.store.append = append;
    await review.bringIn();
    expect(review.stage).toMatchObject({ kind: 'done', lineCount: 4 });
  });

  test('what another window wrote meanwhile is not written twice', async () => {
    const { review, notebook } = await reviewOf(heights);
    await review.bringIn();
    const [specimen] = [...notebook.contents.specimens.keys()];
    const both = 'date,height_cm\n2026-03-05,4\n2026-03-06,4\n';
    const [one, two] = [await reviewOf(both, notebook), await reviewOf(both, notebook)];
    for (const { review: each } of [one, two]) {
      each.aim({ kind: 'existing', specimen: specimen! });
      await each.look();
    }
    await one.review.bringIn();
    await two.review.bringIn();
    expect(notebook.contents.logBySpecimen.get(specimen!)!.readings).toHaveLength(5);
  });
});
