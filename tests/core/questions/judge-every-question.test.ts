import { describe, expect, it } from 'vitest';
import { addDays } from '#core/calendar';
import { exactPerUnit, type Unit } from '#core/measure';
import {
  answerWayOf,
  judgeAnswer,
  questionsOf,
  sameTold,
  type AskedQuestion,
  type Told,
} from '#core/questions';
import { lessonsOfMany } from './lessons-of-many';
import { sampleLessons } from './lessons-of-sample';

const everyAsked = [...Object.values(sampleLessons), ...lessonsOfMany(200)].flatMap(questionsOf);
const saidTo = (question: AskedQuestion, given: Told): string => {
  const judged = judgeAnswer(question, given);
  return judged.kind === 'slip' ? judged.slip : judged.kind;
};
const isHeard = (question: AskedQuestion): boolean => answerWayOf(question).isHeard;
/** Each with its own answer kind, narrowed. */
const answeredBy = <Kind extends Told['kind']>(kind: Kind) =>
  everyAsked.flatMap((question) =>
    question.answer.kind === kind
      ? [{ question, answer: question.answer as Extract<Told, { kind: Kind }> }]
      : [],
  );
const otherUnits: Readonly<Partial<Record<Unit, Unit>>> = { cm: 'in', mm: 'cm', in: 'cm' };
const marks = { in: '1 in', cm: '1 cm' } as const;

describe('any question of many journals', () => {
  it('is answered rightly by its answer, or is for a grown-up to hear', () => {
    for (const question of everyAsked) {
      expect(saidTo(question, question.answer), question.template).toBe(
        isHeard(question) ? 'for-a-grown-up' : 'right',
      );
    }
    const heard = new Set(everyAsked.filter(isHeard).map(({ template }) => template));
    expect([...heard].filter((id) => /^[RC]/.test(id))).toEqual([]);
    // Of all that is beyond or behind, only what is chosen from three questions is judged.
    const judged = everyAsked.filter((each) => /^[YH]/.test(each.template) && !isHeard(each));
    expect(new Set(judged.map(({ template }) => template))).toEqual(new Set(['H9']));
  });

  it('names each of its slips', () => {
    for (const question of everyAsked) {
      for (const { told, shows } of question.slips) {
        expect(saidTo(question, told), question.template).toBe(shows);
      }
    }
  });

  it('of a length knows the number without a unit and in another one, and takes any true unit', () => {
    const lengths = answeredBy('length').filter(({ answer }) => answer.unit !== 'count');
    expect(lengths.length).toBeGreaterThan(500);
    for (const { question, answer } of lengths) {
      const number = answer.exact / exactPerUnit(answer.unit);
      expect(saidTo(question, { kind: 'count', count: number, of: '' })).toBe('forgot-unit');
      const unit = otherUnits[answer.unit];
      if (unit !== 'in' && unit !== 'cm') continue;
      const exact = Math.round(number * exactPerUnit(unit));
      const given: Told = { kind: 'length', exact, unit, mark: marks[unit] };
      if (question.slips.some(({ told }) => sameTold(told, given))) continue;
      expect(saidTo(question, given)).toBe('other-unit');
      const inMm: Told = { kind: 'length', exact: answer.exact, unit: 'mm', mark: '0.1 mm' };
      expect(saidTo(question, inMm)).toBe('right');
    }
  });

  it('of a count takes the number alone, and nothing else', () => {
    for (const { question, answer } of answeredBy('count')) {
      expect(saidTo(question, { ...answer, of: '' })).toBe('right');
      const far: Told = { kind: 'count', count: 99_999, of: '' };
      expect(saidTo(question, far)).toBe('other');
    }
  });

  it('of days takes them in any order, and knows some of them and too many', () => {
    const found = answeredBy('days');
    expect(new Set(found.map(({ question }) => question.template))).toEqual(new Set(['R8', 'C5']));
    for (const { question, answer } of found) {
      const { days } = answer;
      const [first] = days;
      expect(saidTo(question, { kind: 'days', days: days.toReversed() })).toBe('right');
      const more = [...days, addDays(days.at(-1)!, 40)];
      expect(saidTo(question, { kind: 'days', days: more })).toBe('more-than-asked');
      const one = saidTo(question, { kind: 'days', days: [first!] });
      expect(one).toBe(
        days.length === 1 ? 'right' : days.length === 2 ? 'one-day-only' : 'some-left-out',
      );
      expect(saidTo(question, { kind: 'days', days: [addDays(first!, 40)] })).toBe('other');
    }
  });

  it('of an order takes that order only, and offers the things as they come', () => {
    for (const { question, answer } of answeredBy('order')) {
      if (isHeard(question)) continue;
      expect(answerWayOf(question).choices).not.toEqual(answer.things);
      expect(saidTo(question, { kind: 'order', things: answer.things.toReversed() })).toBe(
        'reversed',
      );
    }
  });

  it('of a guess is heard, inside the span and outside', () => {
    for (const { question, answer } of answeredBy('between')) {
      if (!isHeard(question)) continue;
      expect(saidTo(question, answer.low)).toBe('for-a-grown-up');
      expect(saidTo(question, { kind: 'word', word: 'very tall' })).toBe('for-a-grown-up');
    }
  });

  it('to choose from offers its answer among others, in no place of its own', () => {
    const places = everyAsked.flatMap((question) => {
      const { by, choices } = answerWayOf(question);
      if (by !== 'choice') return [];
      const place = choices.findIndex((each) => sameTold(each, question.answer));
      expect(choices.length, question.template).toBeGreaterThan(1);
      return [{ template: question.template, place }];
    });
    expect(places.every(({ place }) => place >= 0)).toBe(true);
    for (const id of ['R5', 'H9', 'Y8']) {
      const ofOne = places.filter(({ template }) => template === id);
      expect(new Set(ofOne.map(({ place }) => place)).size, id).toBeGreaterThan(1);
    }
  });
});
