import { describe, expect, it } from 'vitest';
import type { Stage } from '#core/journal';
import { lessonFactsOf, questionsOf } from '#core/questions';
import { inCm, sampleChoice, sampleNotebook, sampleToday } from '../graphs/sample-logs';

describe('the made-up notebook', () => {
  const inMarch = sampleChoice(
    'days-in-order',
    ['Window bean'],
    ['2026-03-02', '2026-03-30'],
    inCm,
  );
  const ids = (stage: Stage) => {
    const facts = lessonFactsOf(sampleNotebook, inMarch, 'line-graph', stage, sampleToday);
    if (!facts.ok) throw new Error('no facts');
    return questionsOf(facts.value)
      .filter(({ level }) => level === 'beyond' || level === 'behind')
      .map(({ template, blanks }) =>
        blanks.day?.kind === 'day' ? `${template} ${blanks.day.day}` : template,
      );
  };
  it('H10 asks about the number of 19 March that was crossed out', () => {
    expect(ids('grade-2')).toContain('H10 2026-03-19');
    expect(ids('grade-2').filter((id) => id.startsWith('H10'))).toHaveLength(1);
  });
  it('H1 asks where the ruler began, because the plan says so', () => {
    expect(ids('grade-2')).toContain('H1');
  });
  it('H5 asks whether its planned test was fair', () => {
    expect(ids('grade-2')).toContain('H5');
  });
  it('predicts nothing of a log that has ended', () => {
    expect(ids('grade-2').filter((id) => /^Y[135]/.test(id))).toEqual([]);
  });
});
