import { describe, expect, it } from 'vitest';
import { questionIds } from '#core/questions';
import { madeLog } from './made-log';
import { kindsShown } from './raw-tables';
import { plantedInQuestions, plantedInReading } from './planted';
import { askedOf, lineOf, wrongOf } from './whole-reading';

/** Few logs, and enough to plant every mistake many times. */
const seeds = Array.from({ length: 900 }, (_, index) => index + 1);
const logs = seeds.map(madeLog);
const asked = logs.flatMap((log) => askedOf(log));

describe('the reader of raw entries', { timeout: 120_000 }, () => {
  it('has nothing against what is asked of these logs as they are', () => {
    expect(logs.flatMap((log) => wrongOf(log.seed, askedOf(log))).map(lineOf)).toEqual([]);
  });
});

describe('the reader of raw entries finds out', { timeout: 120_000 }, () => {
  it.each(Object.entries(plantedInQuestions))('%s', (_, plant) => {
    const planted = asked.flatMap(({ asking, question }) => {
      const changed = plant(question);
      return changed ? [{ asking, question: changed }] : [];
    });
    const missed = planted.filter((each) => wrongOf(0, [each]).length === 0);
    expect(planted.length).toBeGreaterThanOrEqual(10);
    expect(missed.map(({ question }) => JSON.stringify(question)).slice(0, 3)).toEqual([]);
  });

  it.each(Object.entries(plantedInReading))('%s', (name, meddling) => {
    const found = logs.slice(0, 250).flatMap((log) => wrongOf(log.seed, askedOf(log, meddling)));
    expect({ name, isFoundOut: found.length >= 5 }).toEqual({ name, isFoundOut: true });
  });

  it('questions of an older child asked of a younger one, where the kinds are too many', () => {
    const planted = asked
      .filter(({ asking: { stage, told } }) => stage === 'grade-3' && told === null)
      .filter(({ asking }) => kindsShown(asking).length > 4)
      .map(({ asking, question }) => ({
        asking: { ...asking, stage: 'grade-2' } as const,
        question,
      }));
    expect(planted.length).toBeGreaterThanOrEqual(10);
    const missed = planted.filter(
      (each) => !wrongOf(0, [each])[0]?.wrong.includes('more kinds than the stage has'),
    );
    expect(missed).toEqual([]);
  });

  it('every answer that is a number, a day or an order, in every template that has one', () => {
    const plant = plantedInQuestions['an answer that is one more']!;
    const templates = asked.flatMap(({ question }) =>
      plant(question) === null ? [] : [question.template],
    );
    const inWords = ['R5', 'R9', 'Y3', 'Y4', 'Y5', 'Y6', 'Y8', 'Y9'];
    const behind = ['H1', 'H3', 'H4', 'H6', 'H7', 'H9', 'H10'];
    const expected = questionIds.filter((id) => ![...inWords, ...behind].includes(id));
    expect(expected.filter((id) => !templates.includes(id))).toEqual([]);
  });
});
