import { describe, expect, it } from 'vitest';
import { graphKinds, standardCodes } from '#core/graphs';
import { stages } from '#core/journal';
import { furtherStandards, lessonsShowing, skillIds, skills } from '#core/lessons';
import { questionIds } from '#core/questions';
import { sampleNotebook, sampleToday } from '../graphs/sample-logs';

const skillOf = (id: (typeof skillIds)[number]) => skills.find((each) => each.id === id)!;

describe('the skills', () => {
  it('leave no question, no kind of graph and no item of the review without one', () => {
    const questions = new Set(skills.flatMap((skill) => skill.questions));
    expect(questionIds.filter((id) => !questions.has(id))).toEqual([]);
    const graphs = new Set(skills.flatMap((skill) => skill.graphs));
    expect(graphKinds.filter((kind) => !graphs.has(kind))).toEqual([]);
    expect(new Set(skills.flatMap(({ reviews }) => reviews))).toEqual(
      new Set(['off-zero', 'between-marks', 'sum']),
    );
  });

  it('have known codes only, and no code of a later grade than the stage, but for two of science and the line graph', () => {
    const known: readonly string[] = [...standardCodes, ...furtherStandards];
    for (const [grade, stage] of stages.entries()) {
      const codes = skills.flatMap((skill) => skill.serves[stage] ?? []);
      expect(codes.filter((code) => !known.includes(code))).toEqual([]);
      const later = codes.filter((code) => Number(code[0]) > grade + 1);
      expect(new Set(later)).toEqual(new Set(['5.G.A.2']));
    }
  });

  it('follow the grade in graphs of counts: three kinds, four, then scales', () => {
    const { serves } = skillOf('draws-bar-graph');
    expect(stages.map((stage) => serves[stage])).toEqual([
      ['1.MD.C.4'],
      ['2.MD.D.10'],
      ['3.MD.B.3'],
    ]);
  });
});

describe('the lessons that would show a skill, in the made-up notebook', () => {
  const showing = (id: (typeof skillIds)[number], stage: (typeof stages)[number] = 'grade-2') =>
    lessonsShowing(skillOf(id), sampleNotebook, stage, sampleToday);

  it('draw its graph, those that are ready first', () => {
    const lessons = showing('draws-line-plot');
    expect(lessons.length).toBeGreaterThan(0);
    expect(lessons.every(({ offer }) => offer.purpose.graph === 'line-plot')).toBe(true);
    const ready = lessons.map(({ offer }) => offer.missing.length === 0);
    expect(ready).toEqual([...ready].sort().reverse());
    expect(ready[0]).toBe(true);
  });

  it('ask its question only where the log holds one', () => {
    // "What does each X mean?" is a question of line plots; the step on the side is one of bars.
    const graphs = new Set(showing('reads-key-and-scale').map(({ offer }) => offer.purpose.graph));
    expect(graphs).toContain('line-plot');
    // Only a plan says what differs, so only the beans' lessons can ask whether it was fair.
    const fair = showing('plans-a-fair-test').filter(({ offer }) => offer.missing.length === 0);
    const [beans] = sampleNotebook.investigations.keys();
    expect(new Set(fair.map(({ investigation }) => investigation))).toEqual(new Set([beans]));
  });

  it('are all of them for what every lesson has a part of', () => {
    expect(showing('estimates-first').length).toBeGreaterThan(showing('draws-bar-graph').length);
  });

  it('are none for what no lesson asks', () => {
    expect(showing('asks-own-questions')).toEqual([]);
  });
});
