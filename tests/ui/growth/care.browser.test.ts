import '#ui/look';
import { beforeEach, describe, expect, test } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { readBackup } from '#core/exchange';
import sample from '../../../demo/sample-notebook.json?raw';
import { bean, begun, took } from '../../core/journal/entries';
import { aNotebook } from '../records/a-notebook';
import LogOf from './LogOf.svelte';

/** Readings of the bean that end in a 21 between 9 and 14: a slip, or just what was read. */
const heights = [2, 3, 4, 5, 7, 9, 21, 14];
const beanLog = heights.map((value, index) => took(20 + index, `2026-03-0${index + 1}`, value));

const showBean = async () => {
  const notebook = await aNotebook();
  await notebook.bringIn([...begun, ...beanLog]);
  const screen = await render(LogOf, { notebook, specimen: bean });
  return { notebook, screen };
};

const showSample = async (name: string) => {
  const notebook = await aNotebook();
  const backup = readBackup(sample);
  if (!backup.ok) throw new Error('The sample cannot be read');
  await notebook.bringIn(backup.value.entries);
  const specimen = [...notebook.contents.specimens.values()].find((each) => each.name === name)!;
  const screen = await render(LogOf, { notebook, specimen: specimen.id });
  return { notebook, screen };
};

beforeEach(async () => {
  await page.viewport(1000, 900);
});

describe('numbers to look at together', () => {
  test('are told with what each would mean, and settled by "it was read so"', async () => {
    const { notebook, screen } = await showBean();
    await expect.element(screen.getByText('1 number to look at together')).toBeVisible();
    await expect.element(screen.getByText(/Did the two digits change places/)).toBeVisible();
    await screen.getByRole('button', { name: 'It was read so' }).click();
    await expect.element(screen.getByText('No number waits to be looked at.')).toBeVisible();
    await expect.element(screen.getByText('Looked at already (1)')).toBeVisible();
    const answer = notebook.entries.find(({ kind }) => kind === 'doubt-answered');
    expect(answer).toMatchObject({ answer: 'read-so' });
  });

  test('may be left out of the trend, and never out of the graph', async () => {
    const { screen } = await showBean();
    await screen.getByRole('radio', { name: 'Without Saturday 7 March' }).click();
    await expect.element(screen.getByText(/Middle slope: .* a day with, .* without/)).toBeVisible();
    await expect.element(screen.getByText('on 7 days, over 7 days')).toBeVisible();
    await expect
      .element(screen.getByRole('img', { name: /Line graph/ }))
      .toHaveAccessibleName(/8 readings/);
  });
});

describe('the check on the stick', () => {
  test('keeps no latitude that nobody asked to keep', async () => {
    const { notebook, screen } = await showSample('Yard stick');
    const before = notebook.entries.length;
    await screen.getByLabelText('Latitude in degrees').fill('41');
    await screen.getByRole('button', { name: 'Work it out' }).click();
    // 24 April at 41 degrees north: the sun stands 62 degrees high; 100 cm / tan 62 is 53 cm.
    await expect.element(screen.getByText(/stood 62 degrees high/)).toBeVisible();
    await expect.element(screen.getByText(/54 cm at 13:00\. It fits\./)).toBeVisible();
    expect(notebook.memory.read('latitude') ?? '').toBe('');
    expect(notebook.entries).toHaveLength(before);
  });

  test('keeps it on the device alone where that is ticked, and forgets it', async () => {
    const { notebook, screen } = await showSample('Yard stick');
    const before = notebook.entries.length;
    await screen.getByLabelText('Latitude in degrees').fill('34');
    await screen.getByRole('radio', { name: 'south' }).click();
    await screen.getByRole('checkbox', { name: 'Keep it on this device' }).click();
    await screen.getByRole('button', { name: 'Work it out' }).click();
    await expect.element(screen.getByText('Kept on this device.')).toBeVisible();
    expect(notebook.memory.read('latitude')).toBe('-34');
    expect(notebook.entries).toHaveLength(before);
    await screen.getByRole('button', { name: 'Forget it' }).click();
    await expect.element(screen.getByText('Forgotten.')).toBeVisible();
    expect(notebook.memory.read('latitude')).toBe('');
  });

  test('says why there is nothing to check, and takes no place that is none', async () => {
    const { screen } = await showSample('Yard stick');
    const ask = async (degrees: string) => {
      await screen.getByLabelText('Latitude in degrees').fill(degrees);
      await screen.getByRole('button', { name: 'Work it out' }).click();
    };
    await ask('91');
    await expect.element(screen.getByText('That is not a number from 0 to 90.')).toBeVisible();
    await ask('12');
    await expect.element(screen.getByText(/the sun is nearly overhead there/)).toBeVisible();
  });
});

test('guesses and both sides of the ruler are told of one person at a time', async () => {
  const { screen } = await showSample('Window bean');
  await expect.element(screen.getByText('Wren: 12 guesses were measured.')).toBeVisible();
  await expect.element(screen.getByText(/Counting seems to begin at 0/)).toBeVisible();
  await expect.element(screen.getByText('Pip', { exact: false }).first()).not.toBeInTheDocument();
});
