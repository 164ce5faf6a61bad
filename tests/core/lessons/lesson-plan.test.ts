import { describe, expect, it } from 'vitest';
import type { GraphKind } from '#core/graphs';
import { lessonMinutes, stages, type Stage } from '#core/journal';
import { lessonPlanOf, minutesOf, practiceExample, purposesReady } from '#core/lessons';
import { lessonFactsOf } from '#core/questions';
import { sampleNotebook, sampleToday } from '../graphs/sample-logs';

const investigations = [...sampleNotebook.investigations.values()];
const offersOf = (stage: Stage) =>
  investigations.flatMap(({ id }) =>
    purposesReady(sampleNotebook, { investigation: id }, stage, sampleToday),
  );
const factsOf = (
  choice: ReturnType<typeof offersOf>[number]['choice'],
  graph: GraphKind,
  stage: Stage,
) => {
  const facts = lessonFactsOf(sampleNotebook, choice, graph, stage, sampleToday);
  if (!facts.ok) throw new Error(JSON.stringify(facts.error));
  return facts.value;
};

describe('a lesson', () => {
  it('has parts whose minutes add up to what was asked for', () => {
    for (const minutes of lessonMinutes) {
      expect(minutesOf(minutes).reduce((sum, part) => sum + part.minutes, 0)).toBe(minutes);
    }
  });

  it('is ready of every log of the made-up notebook, at every stage', () => {
    for (const stage of stages) {
      const ready = offersOf(stage).filter(({ missing }) => missing.length === 0);
      expect(new Set(ready.map(({ choice }) => choice.investigation)).size).toBe(
        investigations.length,
      );
    }
  });

  it('is the same from the same seed, and its example never has the numbers of the family', () => {
    for (const stage of stages) {
      for (const { purpose, choice, missing } of offersOf(stage)) {
        if (missing.length > 0) continue;
        const facts = factsOf(choice, purpose.graph, stage);
        for (const seed of [1, 2]) {
          const plan = lessonPlanOf(facts, { purpose: purpose.id, minutes: 30, seed });
          expect(lessonPlanOf(facts, { purpose: purpose.id, minutes: 30, seed })).toEqual(plan);
          expect(plan.example.isPractice).toBe(true);
          expect(plan.example.table).not.toEqual(facts.table);
          expect(plan.words.length).toBeGreaterThanOrEqual(2);
          expect(plan.words.length).toBeLessThanOrEqual(3);
        }
      }
    }
    // Some fifty lessons, each made twice.
  }, 30_000);

  it('passes over practice numbers that are the family’s', () => {
    const [offer] = offersOf('grade-2').filter(({ purpose }) => purpose.graph === 'picture-graph');
    const facts = factsOf(offer!.choice, 'picture-graph', 'grade-2');
    const made = practiceExample(facts, 7);
    const again = practiceExample({ ...facts, table: made.table }, 7);
    expect(again.seed).not.toBe(7);
    expect(again.table).not.toEqual(made.table);
  });

  it('is given in two sittings in grade 1', () => {
    const [offer] = offersOf('grade-1').filter(({ missing }) => missing.length === 0);
    const facts = factsOf(offer!.choice, offer!.purpose.graph, 'grade-1');
    const plan = lessonPlanOf(facts, { purpose: offer!.purpose.id, minutes: 30, seed: 1 });
    expect(plan.parts.map(({ sitting }) => sitting)).toEqual([1, 1, 1, 2, 2, 2]);
  });
});
