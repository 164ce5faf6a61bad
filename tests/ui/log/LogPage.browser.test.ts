import { beforeEach, describe, expect, test } from 'vitest';
import { page } from 'vitest/browser';
import { addDays, civilDay } from '#core/calendar';
import { corrected, marked, noted } from '../../core/series/bean-log';
import { bean, child, read, takenBack, took, written } from '../../core/journal/entries';
import { changedTo, note, showLog } from './a-log';

beforeEach(async () => {
  await page.viewport(1280, 900);
});

const texts = (elements: Iterable<Element>): readonly string[] =>
  [...elements].map((element) => element.textContent!.replace(/\s+/g, ' ').trim());

describe('the log page', () => {
  test('is a table by day, the oldest day first, with the gap where days lie between', async () => {
    const { screen } = await showLog([took(10, '2026-03-05', 2), took(11, '2026-03-09', 7)]);
    await expect.element(screen.getByRole('table', { name: /Bean A, March 2026/ })).toBeVisible();
    const headers = screen.getByRole('columnheader').elements();
    expect(texts(headers)).toEqual(['Day', 'Reading', 'What else', 'Who', 'Change']);
    const days = texts(screen.container.querySelectorAll('tbody th'));
    expect(days).toHaveLength(12);
    expect([days[0], days.at(-1)]).toEqual(['Mon 2 Mar', 'Fri 13 Mar today']);
    const row = screen.getByRole('row', { name: /Mon 9 Mar/ });
    await expect.element(row).toHaveTextContent('7 cm');
    await expect.element(row).toHaveTextContent('4 days since the last one');
  });

  test('keeps weekends in sight, and offers blank planned days to be written', async () => {
    const { screen } = await showLog([took(10, '2026-03-06', 2), took(11, '2026-03-10', 7)]);
    const saturday = screen.getByRole('row', { name: /Sat 7 Mar/ });
    await expect.element(saturday).toHaveTextContent('a day off');
    expect(saturday.getByRole('button').elements()).toHaveLength(0);
    const monday = screen.getByRole('row', { name: /Mon 9 Mar/ });
    await expect.element(monday).toHaveTextContent('nothing written');
    await expect.element(monday.getByRole('button', { name: /Write it now/ })).toBeVisible();
  });

  test('names each state with its word, and never as a number', async () => {
    const { screen } = await showLog([
      marked(10, '2026-03-03', 'not-up-yet'),
      marked(11, '2026-03-04', 'missed'),
      marked(12, '2026-03-05', 'lost'),
    ]);
    for (const word of ['not up yet', 'missed', 'lost']) {
      const cell = screen.getByRole('cell', { name: word, exact: true });
      await expect.element(cell).toBeVisible();
      expect(cell.element().querySelector('svg')).not.toBeNull();
    }
  });

  test('crosses an older reading out beside the new one, with why, when and who', async () => {
    const to = { day: civilDay('2026-03-03'), measured: read(5) };
    const { screen } = await showLog([
      took(10, '2026-03-03', 8),
      { ...corrected(11, 10, to), why: 'I read the other end' } as never,
    ]);
    const row = screen.getByRole('row', { name: /Tue 3 Mar/ });
    await expect.element(row.getByText('5 cm', { exact: true })).toBeVisible();
    expect(texts(row.element().querySelectorAll('del'))).toEqual(['crossed out: 8 cm']);
    await expect.element(row).toHaveTextContent(/fixed Mon 2 Mar.*Wren.*I read the other end/);
  });

  test('shows a line that was taken back with a line through it', async () => {
    const { screen } = await showLog([took(10, '2026-03-03', 8), takenBack(11, 10)]);
    expect(texts(screen.container.querySelectorAll('tbody del'))).toEqual(['crossed out: 8 cm']);
    await expect.element(screen.getByText(/taken back/)).toBeVisible();
    await expect.element(screen.getByRole('button', { name: /Put it back/ })).toBeVisible();
  });

  test('marks the middle one of several readings of a moment', async () => {
    const { screen } = await showLog([
      written(10, {
        ...{ kind: 'reading-taken', specimen: bean, day: civilDay('2026-03-03') },
        ...{ measured: read(9), again: [read(7), read(8)] },
      }),
    ]);
    const several = screen.getByText(/the middle one counts/);
    await expect.element(several).toHaveTextContent('9 cm, 7 cm, 8 cm: the middle one counts');
    expect(texts(several.element().querySelectorAll('strong'))).toEqual(['8 cm']);
  });

  test('tags a rain total with its days', async () => {
    const total = written(10, {
      ...{ kind: 'reading-taken', specimen: bean, day: civilDay('2026-03-03') },
      ...{ measured: read(6, 'mm', '1 mm'), spanDays: 2 },
    });
    const { screen } = await showLog([changedTo({ quantity: 'rain', unit: 'mm' }), total]);
    await expect
      .element(screen.getByRole('row', { name: /Tue 3 Mar/ }))
      .toHaveTextContent('2 days');
  });

  test('folds a long blank stretch, and lays it out on asking', async () => {
    const { screen } = await showLog([]);
    await expect.element(screen.getByText(/11 days with nothing written/)).toBeVisible();
    await expect.element(screen.getByText('Nothing is here yet.')).toBeVisible();
    await screen.getByRole('button', { name: /Show them/ }).click();
    const rows = screen.container.querySelectorAll('tbody tr');
    expect(rows).toHaveLength(12);
    expect(document.activeElement).toBe(rows[0]!.querySelector('th'));
  });

  test('opens a long log at its newest months, and the others on asking', async () => {
    const first = civilDay('2024-12-01');
    const entries = Array.from({ length: 460 }, (_, index) =>
      took(100 + index, addDays(first, index), index % 40),
    );
    const { screen } = await showLog(entries);
    const open = () => screen.container.querySelectorAll('table[role="table"]').length;
    expect(open()).toBe(2);
    await screen.getByRole('button', { name: /Dec 2024/ }).click();
    expect(open()).toBe(3);
    await expect.element(screen.getByRole('row', { name: /Sun 1 Dec/ })).toBeInTheDocument();
    await screen.getByRole('button', { name: 'Go to today' }).click();
    expect(document.activeElement).toHaveTextContent('Fri 13 Mar');
  });

  test('opens at the day its address names, in a month that was closed', async () => {
    const first = civilDay('2024-12-01');
    const entries = Array.from({ length: 460 }, (_, index) =>
      took(100 + index, addDays(first, index), index % 40),
    );
    history.replaceState(history.state, '', '#day-2025-02-14');
    try {
      const { screen } = await showLog(entries);
      const row = screen.getByRole('row', { name: /Fri 14 Feb/ });
      await expect.element(row).toBeInViewport();
      await expect.element(row.getByRole('rowheader')).toHaveFocus();
      expect(screen.container.querySelectorAll('table[role="table"]')).toHaveLength(3);
    } finally {
      history.replaceState(history.state, '', location.pathname + location.search);
    }
  });

  test('lies open whole while it is printed, with its protocol card', async () => {
    const first = civilDay('2024-12-01');
    const entries = Array.from({ length: 460 }, (_, index) =>
      took(100 + index, addDays(first, index), index % 40),
    );
    const { screen } = await showLog([...entries, note(9, '2026-03-12', 'tall '.repeat(700))]);
    const tables = () => screen.container.querySelectorAll('table[role="table"]').length;
    window.dispatchEvent(new Event('beforeprint'));
    // December 2024 to March 2026.
    expect(tables()).toBe(16);
    expect(screen.container.querySelector('.clamped')).toBeNull();
    expect(screen.container.querySelector('.print-only dl')).toHaveTextContent(
      'from the soil to the tip',
    );
    window.dispatchEvent(new Event('afterprint'));
    await expect.poll(tables).toBe(2);
  });
});

describe('both units', () => {
  test('stand beside each reading on asking, no more precise than it deserves', async () => {
    const { screen } = await showLog([took(10, '2026-03-03', 12), noted(11, '2026-03-04', 'sun')]);
    const toggle = screen.getByRole('button', { name: 'Both units' });
    await expect.element(toggle).toHaveAttribute('aria-pressed', 'false');
    await toggle.click();
    const row = screen.getByRole('row', { name: /Tue 3 Mar/ });
    // 12 cm is 4.72 in; a reading to the whole centimetre deserves no finer than the half inch.
    await expect.element(row).toHaveTextContent('12 cm about 4 1/2 in');
    expect(screen.container.querySelectorAll('.about')).toHaveLength(1);
    await toggle.click();
    await expect.element(row).not.toHaveTextContent('about');
  });

  test('are not offered where words are written', async () => {
    const { screen } = await showLog([
      changedTo({ quantity: 'daily-kind', unit: 'count', mark: '1', kinds: ['sun', 'rain'] }),
      noted(11, '2026-03-04', 'sun'),
    ]);
    await expect.element(screen.getByText('sun', { exact: true })).toBeVisible();
    expect(screen.getByRole('button', { name: 'Both units' }).elements()).toHaveLength(0);
    await expect.element(screen.getByRole('columnheader', { name: 'Word' })).toBeVisible();
  });
});

describe('what people wrote', () => {
  test('is shown as it stands, whatever its script, its length or its signs', async () => {
    const sly = '<img src=x onerror="window.slipped = true"> <b>bold</b>';
    const { screen } = await showLog([
      note(10, '2026-03-03', sly),
      note(11, '2026-03-04', 'النبتة تنمو بسرعة'),
      note(12, '2026-03-05', 'We turned the pot. '.repeat(210)),
      written(13, { kind: 'person-changed', person: child, to: { name: 'نور <i>' } }),
      took(14, '2026-03-05', 3),
    ]);
    await expect.element(screen.getByText(sly)).toBeVisible();
    expect(window).not.toHaveProperty('slipped');
    const arabic = screen.getByText('النبتة تنمو بسرعة').element();
    expect(getComputedStyle(arabic).direction).toBe('rtl');
    expect(screen.getByText('نور <i>').first().element().tagName).toBe('BDI');
    const long = screen.getByText(/We turned the pot/);
    const folded = long.element().getBoundingClientRect().height;
    await screen.getByRole('button', { name: 'Read it all' }).click();
    expect(long.element().getBoundingClientRect().height).toBeGreaterThan(folded * 3);
  });
});
