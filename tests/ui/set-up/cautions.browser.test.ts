import '#ui/look';
import { beforeEach, describe, expect, test } from 'vitest';
import { page } from 'vitest/browser';
import { civilDay } from '#core/calendar';
import type { Caution } from '#core/lessons';
import type { Quantity } from '#core/journal';
import { cautionWords, localAdvice } from '#ui/words';
import { written } from '../../core/journal/entries';
import { showSetUp } from './a-set-up';

/** What a grown-up has to hear before each kind of measuring begins: common practice, no source. */
const toTell: readonly (readonly [Quantity, readonly Caution[]])[] = [
  [
    'plant-height',
    [
      ...(['beans', 'treated-seed', 'small-parts', 'allergy', 'soil'] as const),
      ...(['unknown-plants', 'heat-lamp', 'glass', 'sharp-tools'] as const),
    ],
  ],
  ['rain', ['thunder', 'water', 'glass', 'sharp-tools', 'outdoors']],
  ['shadow', ['sun', 'thunder', 'outdoors', 'sharp-tools']],
  ['length', ['beans', 'water', 'small-parts', 'soil', 'glass', 'sharp-tools']],
  ['daily-kind', ['sun', 'thunder']],
];

const lineOf = (screen: Awaited<ReturnType<typeof showSetUp>>['screen'], caution: Caution) =>
  screen.getByRole('listitem').filter({ hasText: cautionWords[caution] });
const putAwayIn = (line: ReturnType<typeof lineOf>) =>
  line.getByRole('button', { name: 'Put away for a week' });

beforeEach(async () => {
  await page.viewport(1000, 900);
});

test.for(toTell)('every caution of %s is told before it begins', async ([quantity, told]) => {
  const { screen } = await showSetUp(quantity);
  await expect.element(screen.getByText(`With care (${told.length})`)).toBeVisible();
  for (const caution of told) await expect.element(lineOf(screen, caution)).toBeVisible();
  await expect.element(screen.getByText(localAdvice)).toBeVisible();
});

describe('a caution that was read', () => {
  test('is put away for a week, and stays on this page', async () => {
    const { screen, writtenOf } = await showSetUp('rain');
    const water = lineOf(screen, 'water');
    await putAwayIn(water).click();
    // Put away on 9 March, that day counted, it rests seven days.
    await expect.element(water.getByText(/comes again on .*16 March 2026/)).toBeVisible();
    await expect.element(putAwayIn(water)).not.toBeInTheDocument();
    expect(writtenOf('caution-put-away')).toEqual([
      expect.objectContaining({ caution: 'water', day: '2026-03-09' }),
    ]);
    await expect.element(screen.getByText('With care (5)')).toBeVisible();
  });

  test.for([
    ['2026-03-03', 'rests'],
    ['2026-03-02', 'is back'],
  ] as const)('put away on %s it %s on 9 March', async ([day, now]) => {
    const since = written(40, { kind: 'caution-put-away', caution: 'water', day: civilDay(day) });
    const { screen } = await showSetUp('rain', [since]);
    const water = lineOf(screen, 'water');
    await expect.element(water).toBeVisible();
    await expect.element(putAwayIn(water)).toHaveLength(now === 'rests' ? 0 : 1);
  });
});

test.for(['shadow', 'rain', 'daily-kind'] as const)(
  'sun and thunder are never put away, in %s neither',
  async (quantity) => {
    const long = (['sun', 'thunder'] as const).map((caution, index) =>
      written(40 + index, { kind: 'caution-put-away', caution, day: civilDay('2026-03-09') }),
    );
    const { screen } = await showSetUp(quantity, long);
    const thunder = lineOf(screen, 'thunder');
    await expect.element(thunder).toBeVisible();
    await expect.element(putAwayIn(thunder)).not.toBeInTheDocument();
    await expect.element(thunder.getByText(/comes again on/)).not.toBeInTheDocument();
    if (quantity !== 'rain') {
      await expect.element(putAwayIn(lineOf(screen, 'sun'))).not.toBeInTheDocument();
    }
  },
);
