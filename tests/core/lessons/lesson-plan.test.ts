import { describe, expect, it } from 'vitest';
import type { GraphKind } from '#core/graphs';
import { lessonMinutes, stages, type Quantity, type Stage } from '#core/journal';
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

  it('tells the cautions of what is done in it, the gravest first', () => {
    const cautionsOf = (quantity: Quantity, graph: GraphKind, putAway = new Map()) => {
      const { id } = investigations.find((each) => each.quantity === quantity)!;
      const [offer] = purposesReady(
        sampleNotebook,
        { investigation: id },
        'grade-2',
        sampleToday,
      ).filter(({ purpose }) => purpose.graph === graph);
      const facts = {
        ...factsOf(offer!.choice, graph, 'grade-2'),
        notebook: { ...sampleNotebook, cautionsPutAway: putAway },
      };
      const wish = { purpose: offer!.purpose.id, minutes: 30, seed: 1 } as const;
      return lessonPlanOf(facts, wish).cautions;
    };
    expect(cautionsOf('shadow', 'line-graph')).toEqual(['sun', 'thunder', 'outdoors']);
    expect(cautionsOf('rain', 'line-plot')).toEqual(['thunder', 'water', 'outdoors']);
    // Counters may be beans.
    expect(cautionsOf('rain', 'picture-graph')).toEqual([
      ...(['thunder', 'beans', 'water', 'small-parts', 'outdoors'] as const),
    ]);
    expect(cautionsOf('plant-height', 'line-graph')).toEqual([]);
    expect(cautionsOf('plant-height', 'picture-graph')).toEqual(['beans', 'small-parts']);
    const rested = new Map([
      ...(['beans', 'thunder', 'outdoors'] as const).map((each) => [each, sampleToday] as const),
    ]);
    expect(cautionsOf('rain', 'picture-graph', rested)).toEqual([
      'thunder',
      'water',
      'small-parts',
    ]);
  });

  it('asks what it is for, where the log has such a question', () => {
    const { id } = investigations.find(({ quantity }) => quantity === 'plant-height')!;
    const wanted = { 'how-much-taller': ['C2'], 'fair-test-of-two': ['C13', 'H5'] } as const;
    for (const [purpose, templates] of Object.entries(wanted)) {
      const offer = purposesReady(
        sampleNotebook,
        { investigation: id },
        'grade-2',
        sampleToday,
      ).find((each) => each.purpose.id === purpose)!;
      const facts = factsOf(offer.choice, offer.purpose.graph, 'grade-2');
      for (const seed of [1, 2, 3]) {
        for (const minutes of [20, 40] as const) {
          const plan = lessonPlanOf(facts, { purpose: offer.purpose.id, minutes, seed });
          const { read, between, beyond, behind } = plan.questions;
          const all = [...read, ...between, ...beyond, ...behind];
          const ids = (minutes === 20 ? [...all, ...plan.spare] : all).map(
            ({ template }) => template,
          );
          expect(ids).toEqual(expect.arrayContaining([...templates]));
          expect(new Set(ids).size).toBe(ids.length);
          if (minutes === 20) expect(between[0]?.template).toBe(templates[0]);
        }
      }
    }
    // Twelve lessons of the whole log.
  }, 30_000);

  it('is given in two sittings in grade 1', () => {
    const [offer] = offersOf('grade-1').filter(({ missing }) => missing.length === 0);
    const facts = factsOf(offer!.choice, offer!.purpose.graph, 'grade-1');
    const plan = lessonPlanOf(facts, { purpose: offer!.purpose.id, minutes: 30, seed: 1 });
    expect(plan.parts.map(({ sitting }) => sitting)).toEqual([1, 1, 1, 2, 2, 2]);
  });
});
