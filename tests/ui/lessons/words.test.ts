import { describe, expect, test } from 'vitest';
import { tableSources } from '#core/graphs';
import { purposeIds } from '#core/lessons';
import {
  choiceDetail,
  givenText,
  insteadByPurpose,
  missingText,
} from '../../../src/lib/ui/lessons/lessons-words';
import { minutesText } from '../../../src/lib/ui/lessons/plan-words';

describe('what is missing is told as the next thing to do', () => {
  test('with how many more, and of what', () => {
    expect(missingText([{ kind: 'more-needed', have: 3, need: 8 }], 'kind-days')).toBe(
      '5 more days.',
    );
    expect(missingText([{ kind: 'more-needed', have: 7, need: 8 }], 'reads-of-one')).toBe(
      '1 more reading of the same thing.',
    );
    expect(missingText([{ kind: 'no-repeats' }], 'growth-amounts')).toContain('piles');
  });

  test('for every table, and every purpose has a lesson in its place', () => {
    const lacking = [{ kind: 'more-needed', have: 0, need: 4 }] as const;
    const texts = tableSources.map((source) => missingText(lacking, source));
    expect(texts.filter((text) => !/^4 more [a-z ]+\.$/.test(text))).toEqual([]);
    expect(purposeIds.filter((id) => insteadByPurpose[id].text === '')).toEqual([]);
  });
});

test('the days of a lesson, and of how many logs', () => {
  const choice = {
    ...{ source: 'days-in-order', investigation: 'one', specimens: ['a', 'b'] },
    ...{ from: '2026-03-02', to: '2026-03-09', told: null, mostKinds: null },
  } as never;
  expect(choiceDetail(choice)).toBe('Mon 2 Mar to Mon 9 Mar, 2 together');
});

test('minutes and days given are told in words', () => {
  expect([minutesText(1), minutesText(5)]).toEqual(['About 1 minute', 'About 5 minutes']);
  expect([givenText([]), givenText(['Mon 2 Mar', 'Tue 3 Mar'])]).toEqual([
    'Not given yet',
    'Given on Mon 2 Mar, Tue 3 Mar',
  ]);
});
