import { describe, expect, it } from 'vitest';
import { graphKinds, type MistakeId, type RightPart } from '#core/graphs';
import { hintWords, rightWords } from '#ui/draw-words';
import { gradeOf, sentencesOf, wordsOf } from '../../readability';

const numbered = (letter: string, count: number): readonly MistakeId[] =>
  Array.from({ length: count }, (_, index) => `${letter}${index + 1}` as MistakeId);
const pictureAndBar = [...numbered('P', 13), ...numbered('B', 16)];
const every = [...pictureAndBar, ...numbered('L', 15), ...numbered('T', 14)];
const steps = pictureAndBar.flatMap((id) =>
  hintWords(id).map((text, step) => ({ id, step: step + 1, text })),
);

describe('hints', () => {
  it('are there for each of the 58 numbered mistakes, in three steps, each its own', () => {
    expect(every).toHaveLength(58);
    for (const id of every) expect(new Set(hintWords(id)).size, id).toBe(3);
  });
});

describe('the hints for picture graphs and bar graphs', () => {
  it.each(steps)('$id step $step is short and easy to read', ({ text }) => {
    for (const sentence of sentencesOf(text)) {
      expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(10);
    }
    expect(gradeOf(text)).toBeLessThanOrEqual(3);
  });

  it.each(steps)('$id step $step is kind and holds no number', ({ text }) => {
    expect(text).not.toMatch(/\d/);
    expect(text).not.toMatch(/\b(wrong|mistake|error|bad|fail\w*|incorrect|zero|nought)\b/i);
    expect(text).not.toMatch(/\b(two|three|four|five|six|seven|eight|nine|ten)\b/i);
  });

  it.each(pictureAndBar)('%s points, asks, and only then goes beside a grown-up', (id) => {
    const [place, idea, besideGrownUp] = hintWords(id);
    expect(place).toMatch(/^Look/);
    expect(idea).toMatch(/\?$/);
    expect(`${place} ${idea}`).not.toMatch(/grown-up/);
    expect(besideGrownUp).toMatch(/grown-up/);
  });
});

describe('the words for what is right', () => {
  const parts: readonly RightPart[] = [
    ...(['title', 'key', 'side-label', 'bottom-label', 'scale-from-zero', 'even-scale'] as const),
    ...(['every-place', 'same-size', 'stand-on-base', 'every-value', 'one-mark-each'] as const),
    ...(['every-day', 'joined-in-order', 'gaps-shown', 'unit'] as const),
  ];
  const said = graphKinds.flatMap((kind) =>
    parts.map((part) => ({ kind, part, text: rightWords(part, kind) })),
  );

  it.each(said)('of $part in a $kind praise what was done, in a short sentence', ({ text }) => {
    expect(sentencesOf(text)).toHaveLength(1);
    expect(wordsOf(text).length).toBeLessThanOrEqual(10);
    expect(gradeOf(text)).toBeLessThanOrEqual(3);
    expect(text).not.toMatch(/\d|\b(clever|smart|best|perfect|good|wrong)\b/i);
  });
});
