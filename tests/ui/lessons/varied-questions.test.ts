import { expect, test } from 'vitest';
import type { AskedQuestion } from '#core/questions';
import { variedQuestions } from '../../../src/lib/ui/lessons/varied-questions';

const asked = (template: string, range: string) => ({ template, range }) as AskedQuestion;

test('one of each template comes first, then the next way to ask each', () => {
  const [a1, a2, a3] = [asked('R1', 'a'), asked('R1', 'b'), asked('R1', 'c')];
  const [b1, b2] = [asked('R3', 'a'), asked('R3', 'b')];
  const given = Object.freeze([a1, a2, a3, b1, b2]);
  expect(variedQuestions(given)).toEqual([a1, b1, a2, b2, a3]);
  expect(variedQuestions([])).toEqual([]);
});
