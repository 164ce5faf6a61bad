import { expect, test } from 'vitest';
import type { Notebook, PersonId, SpecimenId } from '#core/journal';
import { lessonSettings } from '../../../src/lib/ui/ruler-lessons/lesson-settings';

const people = {
  aunt: { role: 'grown-up', stage: 'grade-1', hand: 'left' },
  wren: { role: 'child', stage: 'grade-1', hand: 'left' },
  finch: { role: 'child', stage: 'grade-3', hand: 'right' },
};
const notebook = (who: readonly (keyof typeof people)[], unit: string) =>
  ({
    people: new Map(who.map((id) => [id, { id, ...people[id] }])),
    specimens: new Map([['bean', { investigation: 'beans' }]]),
    investigations: new Map([['beans', { unit }]]),
  }) as unknown as Notebook;
const settingsOf = (
  who: readonly (keyof typeof people)[],
  author: keyof typeof people | null,
  unit = 'in',
  specimen: string | null = 'bean',
) => lessonSettings(notebook(who, unit), author as PersonId | null, specimen as SpecimenId | null);

test('a lesson suits the child who writes', () => {
  expect(settingsOf(['wren', 'finch'], 'finch')).toMatchObject({ stage: 'grade-3', hand: 'right' });
});

test('with a grown-up writing, it suits the first child', () => {
  expect(settingsOf(['aunt', 'wren', 'finch'], 'aunt')).toMatchObject({
    ...{ stage: 'grade-1', hand: 'left' },
  });
});

test('with no child known, it suits a right-handed second grader', () => {
  expect(settingsOf(['aunt'], 'aunt')).toMatchObject({ stage: 'grade-2', hand: 'right' });
});

test.each([
  ['in', 'inches'],
  ['ft', 'inches'],
  ['cm', 'centimetres'],
  ['mm', 'centimetres'],
  ['count', 'inches'],
])('a log in %s begins it in %s', (unit, family) => {
  expect(settingsOf(['wren'], 'wren', unit).family).toBe(family);
});

test('with no log it begins in inches', () => {
  expect(settingsOf([], null, 'cm', null).family).toBe('inches');
});
