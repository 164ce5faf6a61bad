import { describe, expect, it } from 'vitest';
import { standardsOf } from '#core/graphs';
import { inCm, sampleChoice } from '../graphs/sample-logs';
import { entriesUntil, lessonEntries, lessonIn, type ToMake } from './made-lessons';
import { planAsText } from './plan-as-text';

/** Lessons of the made-up notebook, by the name of their golden file. */
const plans: Readonly<Record<string, ToMake>> = {
  'weather-pictures': {
    ...{ on: '2026-03-20', graph: 'picture-graph', stage: 'grade-1' },
    choice: sampleChoice(
      ...(['weather-days', ['Window bean', 'Shelf bean'], ['2026-03-02', '2026-03-20']] as const),
    ),
    wish: { purpose: 'picture-graph-of-kinds', minutes: 30, seed: 3 },
  },
  'growth-line-plot': {
    ...{ on: '2026-03-31', graph: 'line-plot', stage: 'grade-2' },
    choice: sampleChoice(
      ...(['growth-amounts', ['Window bean'], ['2026-03-11', '2026-03-30'], inCm] as const),
    ),
    wish: { purpose: 'line-plot-of-amounts', minutes: 40, seed: 3 },
  },
  'how-much-taller': {
    ...{ on: '2026-03-20', graph: 'bar-graph', stage: 'grade-2' },
    choice: sampleChoice(
      ...(['day-values', ['Window bean'], ['2026-03-11', '2026-03-20'], inCm] as const),
    ),
    wish: { purpose: 'how-much-taller', minutes: 20, seed: 3 },
  },
  'two-side-by-side': {
    ...{ on: '2026-03-31', graph: 'bar-graph', stage: 'grade-2' },
    choice: sampleChoice(
      ...([
        'values-side-by-side',
        ['Window bean', 'Shelf bean'],
        ['2026-03-16', '2026-03-20'],
        inCm,
      ] as const),
    ),
    wish: { purpose: 'two-side-by-side', minutes: 40, seed: 3 },
  },
  'fair-test': {
    ...{ on: '2026-03-31', graph: 'line-graph', stage: 'grade-3' },
    choice: sampleChoice(
      ...([
        'days-in-order',
        ['Window bean', 'Shelf bean'],
        ['2026-03-11', '2026-03-30'],
        inCm,
      ] as const),
    ),
    wish: { purpose: 'fair-test-of-two', minutes: 40, seed: 3 },
  },
};

describe('a plan of the made-up notebook', () => {
  it.each(Object.entries(plans))('of %s reads as in its golden file', async (name, make) => {
    const entries = [...entriesUntil(make.on), ...lessonEntries(make)];
    const lesson = lessonIn(entries);
    const subject = make.choice.source === 'weather-days' ? 'weather' : 'other';
    const standards = [
      ...standardsOf(make.graph, lesson.facts.table, make.stage, subject),
      ...lesson.purpose.alsoServes,
    ];
    const text = planAsText(lesson, standards);
    expect(text).not.toMatch(/undefined|NaN|\[object/);
    await expect(`${text}\n`).toMatchFileSnapshot(`./${name}.plan.golden.txt`);
  });
});
