import '#ui/look';
import { beforeEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { child, read } from '../../core/journal/entries';
import { showSetUp } from './a-set-up';

beforeEach(async () => {
  await page.viewport(1000, 900);
});

describe('the child’s own helpers', () => {
  test('are measured on the child and kept', async () => {
    const { screen, writtenOf } = await showSetUp();
    await expect.element(screen.getByText(/^Hand span: not measured yet/)).toBeVisible();
    await screen.getByRole('button', { name: 'Measure : Hand span, Wren' }).click();
    await screen.getByRole('textbox', { name: 'Hand span, Wren' }).fill('13');
    await screen.getByRole('button', { name: 'Write it down' }).click();
    await expect.element(screen.getByText(/^Hand span: 13 cm/)).toBeVisible();
    expect(writtenOf('helper-length-measured')).toEqual([
      expect.objectContaining({ person: child, helper: 'hand-span', measured: read(13) }),
    ]);
    await expect
      .element(screen.getByRole('button', { name: 'Measure again : Hand span, Wren' }))
      .toHaveFocus();
  });

  test('take no number that cannot be read, and write nothing when left', async () => {
    const { screen, writtenOf } = await showSetUp();
    await screen.getByRole('button', { name: 'Measure : Foot, Wren' }).click();
    await screen.getByRole('button', { name: 'Write it down' }).click();
    await expect.element(screen.getByText('Write a number first.')).toBeVisible();
    await screen.getByRole('button', { name: 'Leave it' }).click();
    await expect.element(screen.getByText(/^Foot: not measured yet/)).toBeVisible();
    expect(writtenOf('helper-length-measured')).toEqual([]);
  });
});

describe('the zero of the ruler', () => {
  test('is looked at once and kept', async () => {
    const { screen, writtenOf } = await showSetUp();
    await screen.getByRole('button', { name: 'Yes, zero touches the table' }).click();
    await expect
      .element(screen.getByText('Looked at on Monday 9 March 2026: zero touches the table.'))
      .toBeVisible();
    expect(writtenOf('ruler-checked')).toEqual([
      expect.objectContaining({ zeroAtEdge: true, day: '2026-03-09' }),
    ]);
  });

  test('with a gap before it has three ways to help, and is looked at again', async () => {
    const { screen, writtenOf } = await showSetUp();
    await screen.getByRole('button', { name: 'No, there is a gap' }).click();
    await expect.element(screen.getByText(/there is a gap before zero/)).toBeVisible();
    const helps = screen.getByRole('region', { name: 'Our ruler' }).getByRole('listitem');
    await expect.element(helps).toHaveLength(3);
    await screen.getByRole('button', { name: 'Look at a ruler again' }).click();
    await screen.getByRole('button', { name: 'Yes, zero touches the table' }).click();
    await expect.element(screen.getByText(/: zero touches the table\.$/)).toBeVisible();
    expect(writtenOf('ruler-checked')).toHaveLength(2);
  });
});

describe('what is added to an investigation', () => {
  test.for([
    ['plant-height', 'How tall is the pot?'],
    ['shadow', 'How tall is the stick?'],
  ] as const)('of %s is asked: %s', async ([quantity, question]) => {
    const { screen, writtenOf } = await showSetUp(quantity);
    await screen.getByRole('button', { name: 'Measure one more beside it' }).click();
    await screen.getByLabelText('What is it called?').fill('The other one');
    await screen.getByLabelText(question).fill('12 cm');
    await screen.getByRole('button', { name: 'Add it' }).click();
    await expect.element(screen.getByText(/stands 12 cm high/)).toBeVisible();
    expect(writtenOf('specimen-added').at(-1)).toMatchObject({
      name: 'The other one',
      standHeight: { unit: 'cm', exact: 120_000_000 },
    });
  });

  test('whose height cannot be read is not added without it unasked', async () => {
    const { screen, writtenOf } = await showSetUp();
    await screen.getByRole('button', { name: 'Measure one more beside it' }).click();
    await screen.getByLabelText('How tall is the pot?').fill('tall');
    await screen.getByRole('button', { name: 'Add it' }).click();
    await expect.element(screen.getByRole('alert')).toBeVisible();
    expect(writtenOf('specimen-added')).toHaveLength(1);
    await screen.getByLabelText('How tall is the pot?').fill('');
    await userEvent.keyboard('{Enter}');
    await expect.element(screen.getByRole('alert')).not.toBeInTheDocument();
    expect(writtenOf('specimen-added')).toHaveLength(2);
  });

  test('in a rain gauge has no such height', async () => {
    const { screen } = await showSetUp('rain');
    await screen.getByRole('button', { name: 'Measure one more beside it' }).click();
    await expect.element(screen.getByLabelText('What is it called?')).toBeVisible();
    await expect.element(screen.getByLabelText(/How tall/)).not.toBeInTheDocument();
  });
});
