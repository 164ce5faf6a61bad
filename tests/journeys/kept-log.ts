import type { Page } from '@playwright/test';
import { putEntries } from './put-entries';

/** A log that was kept for a while, put where the notebook keeps it: made up for these journeys. */
const idOf = (number: number): string =>
  `00000000-0000-7000-8000-${String(number).padStart(12, '0')}`;

export const kept = {
  wren: idOf(701),
  beans: idOf(801),
  beanA: idOf(901),
  beanB: idOf(902),
} as const;

type Draft = Readonly<Record<string, unknown>> & { readonly kind: string };
/** An entry's body, and the day it was written on. */
export type Written = readonly [day: string, draft: Draft];

export const cm = (value: number) => ({
  text: String(value),
  unit: 'cm',
  mark: '1 cm',
  exact: value * 10_000_000,
});

export const height = (specimen: string, day: string, value: number, leaves?: number): Written => [
  day,
  {
    ...{ kind: 'reading-taken', specimen, day, measured: cm(value) },
    ...(leaves === undefined ? {} : { leaves }),
  },
];

const begun: readonly Draft[] = [
  { kind: 'notebook-begun', title: 'Our notebook' },
  {
    ...{ kind: 'person-added', person: kept.wren, name: 'Wren', shape: 'leaf', colour: 2 },
    ...{ role: 'child', stage: 'grade-2', hand: 'right' },
  },
  {
    ...{ kind: 'investigation-begun', investigation: kept.beans, title: 'Our beans' },
    ...{ question: 'How tall will they grow?', quantity: 'plant-height', unit: 'cm' },
    ...{ mark: '1 cm', kinds: [], weekdays: [1, 2, 3, 4, 5], where: 'From soil to tip' },
    ...{ tool: 'The same ruler', when: 'Every morning', origin: 'ours' },
  },
];

const specimen = (id: string, name: string): Draft => ({
  ...{ kind: 'specimen-added', specimen: id, investigation: kept.beans, name },
  startedOn: '2026-03-02',
});

/** Puts a notebook of one bean, or two, where the notebook looks for it; then opens a page of it. */
export async function openKeptLog(
  page: Page,
  path: string,
  { beans = 1, written = [] }: { beans?: 1 | 2; written?: readonly Written[] },
): Promise<void> {
  const specimens = [specimen(kept.beanA, 'Bean A'), specimen(kept.beanB, 'Bean B')];
  const all: readonly Written[] = [
    ...[...begun, ...specimens.slice(0, beans)].map((draft) => ['2026-03-02', draft] as const),
    ...written,
  ];
  const entries = all.map(([day, draft], index) => ({
    ...{ id: idOf(index + 1), device: idOf(601), author: kept.wren, v: 1 },
    at: `${day}T14:00:00.${String(index).padStart(3, '0')}Z-00000`,
    ...draft,
  }));
  await putEntries(page, entries);
  // As the beginning of a notebook leaves it: the child who measures writes.
  await page.evaluate((who) => localStorage.setItem('morning-measure:author', who), kept.wren);
  await page.goto(path);
}

/** Presses the tab key until this is where the keyboard is. */
export async function tabTo(
  page: Page,
  name: string | RegExp,
  role: 'button' | 'textbox' | 'radio' | 'checkbox',
): Promise<void> {
  const wanted = page.getByRole(role, { name, exact: true }).first();
  await wanted.waitFor();
  for (let presses = 0; presses < 80; presses += 1) {
    if (await wanted.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`The keyboard never reached ${String(name)}`);
}
