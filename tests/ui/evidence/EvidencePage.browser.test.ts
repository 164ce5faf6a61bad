import '#ui/look';
import { beforeEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import type { EntryId, JournalEntry, PersonId } from '#core/journal';
import {
  answered,
  drawing,
  drawn,
  noted,
  oneChild,
  sister,
  twoChildren,
} from '../../core/lessons/evidence-journals';
import { anId, took, written } from '../../core/journal/entries';
import { aNotebook } from '../records/a-notebook';
import EvidenceOf from './EvidenceOf.svelte';

/** The page on Monday 9 March 2026. */
const show = async (journal: readonly JournalEntry[], asked: PersonId | null = null) => {
  const notebook = await aNotebook();
  await notebook.bringIn(journal);
  const screen = await render(EvidenceOf, { notebook, asked });
  const writtenOf = (kind: JournalEntry['kind']) =>
    notebook.entries.filter((entry) => entry.kind === kind);
  return { screen, notebook, writtenOf };
};

const group = (name: string) => page.getByRole('region', { name });
const card = (name: string) => page.getByRole('listitem').filter({ hasText: name }).first();
const open = (name: string) => card(name).getByText(name, { exact: true }).first().click();

const summaryOf = (name: string) => card(name).element().querySelector('summary')!;

const alone = (number: number, day: string) => written(number, answered('R1', day, 'alone'));

beforeEach(async () => {
  await page.viewport(1000, 900);
});

describe('what has been seen', () => {
  test('stands in three groups, with its days and how it was done', async () => {
    await show([
      ...oneChild,
      ...['2026-03-03', '2026-03-04', '2026-03-05'].map((day, index) => alone(10 + index, day)),
      written(20, noted('estimates-first', '2026-03-04', 'with-help')),
    ]);
    const often = group('Seen often').getByRole('listitem');
    await expect.element(often).toHaveLength(1);
    await expect.element(often).toHaveTextContent(/Reads a graph 2\.MD\.D\.10/);
    await expect.element(often).toHaveTextContent(/Alone: Thu 5 Mar, Wed 4 Mar, Tue 3 Mar/);
    await expect.element(group('Seen sometimes').getByText('With help: Wed 4 Mar')).toBeVisible();
    await expect
      .element(group('Not seen yet').getByText('Draws a bar graph', { exact: true }))
      .toBeVisible();
  });

  test('has no number that could be a score, and no name of another child', async () => {
    const { screen } = await show(
      [
        ...twoChildren,
        alone(10, '2026-03-03'),
        written(11, answered('R1', '2026-03-04', 'alone'), { author: sister }),
      ],
      anId<PersonId>(701),
    );
    await expect.element(page.getByRole('heading', { name: 'Evidence: Wren' })).toBeVisible();
    const text = screen.container.textContent!;
    expect(text).not.toMatch(/%|\d+ (out )?of \d|\d\s*\/\s*\d/i);
    expect(text.match(/Pip/g)).toHaveLength(1);
    await expect.element(page.getByRole('link', { name: 'Pip' })).toBeVisible();
  });

  test('opens to the question and the answer, and to the drawing itself', async () => {
    await show([...oneChild, alone(10, '2026-03-03'), ...drawn(20, 'bar-graph')]);
    await open('Reads a graph');
    await expect.element(card('Reads a graph').getByText(/Find Monday 2 March/)).toBeVisible();
    await expect.element(card('Reads a graph').getByText('“3 days”')).toBeVisible();
    await open('Draws a bar graph');
    await expect
      .element(card('Draws a bar graph').getByRole('img', { name: /bar graph/i }))
      .toBeVisible();
  });

  test('that the notebook saw on many days asks whether it was alone', async () => {
    const days = ['03', '04', '05'];
    await show([...oneChild, ...days.map((day, at) => took(10 + at, `2026-03-${day}`, 7 + at))]);
    await open('Keeps a log');
    await expect
      .element(card('Keeps a log').getByText(/saw it on 3 days, but cannot tell who helped/))
      .toBeVisible();
  });

  test('tells what could not be read, and loses nothing else for it', async () => {
    await show([
      ...oneChild,
      written(10, answered('broken', '2026-03-03', 'alone')),
      alone(11, '2026-03-04'),
    ]);
    await expect.element(page.getByText(/^1 entry could not be read here/)).toBeVisible();
    await expect.element(page.getByText('Alone: Wed 4 Mar')).toBeVisible();
  });

  test('needs a child', async () => {
    await show([]);
    await expect.element(page.getByRole('link', { name: 'Set-up' })).toBeVisible();
  });
});

describe('a skill that was not seen yet', () => {
  test('says where it would show', async () => {
    const days = ['02', '03', '04', '05', '06'];
    await show([...oneChild, ...days.map((day, at) => took(10 + at, `2026-03-${day}`, 2 + at))]);
    await open('Draws a bar graph');
    const lesson = card('Draws a bar graph').getByRole('link', {
      name: 'Show each measure as a bar, one after the other',
    });
    await expect.element(lesson).toHaveAttribute('href', `/lessons?of=${anId(901)}`);
    await expect
      .element(card('Draws a bar graph').getByText('(Our beans; ready today)').first())
      .toBeVisible();
    await expect
      .element(card('Draws a bar graph').getByRole('link', { name: 'Draw' }))
      .toBeVisible();
  });
});

describe('a note', () => {
  test('is written with a skill, how, a day, a drawing and words, and is a kept sample', async () => {
    const { writtenOf } = await show([...oneChild, ...drawn(20, 'bar-graph')]);
    await expect.element(page.getByText(/^None chosen yet/)).toBeVisible();
    await page.getByRole('button', { name: 'Add a note', exact: true }).click();
    await expect.element(page.getByLabelText('Which skill')).toHaveFocus();
    await page.getByRole('button', { name: 'Write it down' }).click();
    await expect.element(page.getByRole('alert')).toHaveTextContent('Choose a skill first.');
    expect(writtenOf('evidence-noted')).toEqual([]);

    await page.getByLabelText('Which skill').selectOptions('Draws a bar graph');
    await page.getByRole('radio', { name: 'With help' }).click();
    await page.getByLabelText('Attach').selectOptions('Bar graph: Our beans (Mon 2 Mar 2026)');
    // The drawing says on which day it was.
    await expect.element(page.getByLabelText('On which day')).toHaveValue('2026-03-02');
    await page.getByLabelText('In words').fill('Two bars from 1, put right.');
    await page.getByRole('button', { name: 'Write it down' }).click();
    await expect.element(page.getByText('Written down under “Draws a bar graph”.')).toBeVisible();
    expect(writtenOf('evidence-noted')).toEqual([
      expect.objectContaining({
        ...{ person: anId(701), skill: 'draws-bar-graph', how: 'with-help', day: '2026-03-02' },
        ...{ drawing: drawing(20), note: 'Two bars from 1, put right.' },
      }),
    ]);
    const samples = group('Kept samples');
    await expect.element(samples.getByRole('img', { name: /bar graph/i })).toBeVisible();
    await expect.element(samples.getByText('2 March 2026')).toBeVisible();
  });

  test('takes no day to come', async () => {
    const { writtenOf } = await show(oneChild);
    await page.getByRole('button', { name: 'Add a note', exact: true }).click();
    await page.getByLabelText('Which skill').selectOptions('Estimates first');
    await page.getByLabelText('On which day').fill('2026-03-10');
    await page.getByRole('button', { name: 'Write it down' }).click();
    await expect.element(page.getByRole('alert')).toHaveTextContent('today, or earlier');
    expect(writtenOf('evidence-noted')).toEqual([]);
    await page.getByRole('button', { name: 'Leave it' }).click();
    await expect
      .element(page.getByRole('button', { name: 'Add a note', exact: true }))
      .toHaveFocus();
  });

  test('is written anew by taking the old one back, and keyboard and card follow it', async () => {
    const { writtenOf } = await show([
      ...oneChild,
      written(10, noted('estimates-first', '2026-03-04', 'with-help', { note: 'with the hand' })),
    ]);
    await open('Estimates first');
    await page.getByRole('button', { name: 'Write it anew : Wed 4 Mar' }).click();
    await expect.element(page.getByLabelText('In words')).toHaveValue('with the hand');
    await page.getByRole('radio', { name: 'Alone' }).click();
    await page.getByRole('button', { name: 'Write it down' }).click();
    await expect.element(card('Estimates first').getByText('Alone: Wed 4 Mar')).toBeVisible();
    await expect.element(page.elementLocator(summaryOf('Estimates first'))).toHaveFocus();
    expect(writtenOf('entry-taken-back')).toEqual([expect.objectContaining({ entry: anId(10) })]);
    expect(writtenOf('evidence-noted')).toHaveLength(2);
  });

  test('that is taken back is gone, and can be brought back', async () => {
    const { notebook } = await show([
      ...oneChild,
      written(10, noted('estimates-first', '2026-03-04', 'alone')),
    ]);
    await open('Estimates first');
    await page.getByRole('button', { name: 'Take it back : Wed 4 Mar' }).click();
    await expect
      .element(group('Not seen yet').getByText('Estimates first', { exact: true }))
      .toBeVisible();
    await notebook.undo();
    await expect
      .element(group('Seen sometimes').getByText('Estimates first', { exact: true }))
      .toBeVisible();
  });

  test('about an answer that the notebook kept stands in its place', async () => {
    const { writtenOf } = await show([
      ...oneChild,
      written(10, answered('R1', '2026-03-03', 'seen')),
    ]);
    await open('Reads a graph');
    await page.getByRole('button', { name: 'Add a note about it : Tue 3 Mar' }).click();
    await expect.element(page.getByLabelText('On which day')).toHaveValue('2026-03-03');
    await expect.element(page.getByRole('radio', { name: 'I saw it' })).toBeChecked();
    await page.getByRole('radio', { name: 'Alone' }).click();
    await page.getByRole('button', { name: 'Write it down' }).click();
    await expect.element(card('Reads a graph').getByText('Alone: Tue 3 Mar')).toBeVisible();
    expect(writtenOf('evidence-noted')).toEqual([
      expect.objectContaining({ skill: 'reads-a-graph', answer: anId<EntryId>(10) }),
    ]);
  });
});

describe('what nobody put a name to', () => {
  test('counts for nobody until a note says whose it is', async () => {
    const { writtenOf } = await show([
      ...twoChildren,
      written(10, answered('R2', '2026-03-04', 'with-help'), { author: null }),
    ]);
    await expect
      .element(group('Not seen yet').getByText('Reads a graph', { exact: true }))
      .toBeVisible();
    await page.getByRole('button', { name: 'It is Wren’s' }).click();
    await expect.element(page.getByRole('radio', { name: 'With help' })).toBeChecked();
    await page.getByRole('button', { name: 'Write it down' }).click();
    await expect
      .element(group('Seen sometimes').getByText('Reads a graph', { exact: true }))
      .toBeVisible();
    await expect.element(page.getByText('Nobody’s name is on these')).not.toBeInTheDocument();
    expect(writtenOf('evidence-noted')).toEqual([
      expect.objectContaining({ person: anId(701), answer: anId(10), how: 'with-help' }),
    ]);
  });
});

test('the keyboard alone opens a skill and writes a note about it', async () => {
  const { writtenOf } = await show(oneChild);
  summaryOf('Looks beyond, with a because').focus();
  await userEvent.keyboard('{Enter}');
  await expect
    .element(page.getByRole('button', { name: 'Add a note : Looks beyond, with a because' }))
    .toBeVisible();
  await userEvent.keyboard('{Tab}{Enter}');
  await expect.element(page.getByLabelText('Which skill')).toHaveValue('looks-beyond');
  (page.getByLabelText('In words').element() as HTMLElement).focus();
  await userEvent.keyboard('Said why.{Tab}{Enter}');
  await expect
    .element(group('Seen sometimes').getByText('Looks beyond, with a because', { exact: true }))
    .toBeVisible();
  expect(writtenOf('evidence-noted')).toHaveLength(1);
});
