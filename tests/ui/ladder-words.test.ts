import { describe, expect, it } from 'vitest';
import { civilDay, parseClockTime } from '#core/calendar';
import { exactPerUnit, type MarkId, type Unit } from '#core/measure';
import { questionsOf, slipIds, type Told } from '#core/questions';
import { answerText, easierText, questionText, slipText, stretchText } from '#ui/ladder-words';
import { lessonsOfMany } from '../core/questions/lessons-of-many';
import { sampleLessons } from '../core/questions/lessons-of-sample';

const long = (number: number, unit: Unit, mark: MarkId): Told => ({
  ...{ kind: 'length', exact: Math.round(number * exactPerUnit(unit)), unit, mark },
});
const day = (text: string): Told => ({ kind: 'day', day: civilDay(text) });
const time = (text: string): Told => {
  const read = parseClockTime(text);
  if (!read.ok) throw new Error(text);
  return { kind: 'time', time: read.value };
};
const between = (low: Told, high: Told, more = {}): Told => ({
  ...{ kind: 'between', low, high },
  ...more,
});
const cm = (number: number) => long(number, 'cm', '1 cm');

describe('an answer as a child reads it', () => {
  it.each([
    [cm(12), '12 cm'],
    [long(1, 'in', '1 in'), '1 inch'],
    [long(0.5, 'in', '1/2 in'), '1/2 inch'],
    [long(1.5, 'in', '1/2 in'), '1 1/2 inches'],
    [long(1, 'ft', '1 ft'), '1 foot'],
    [long(3, 'ft', '1 ft'), '3 feet'],
    [{ kind: 'count', count: 1, of: 'days' }, '1 day'],
    [{ kind: 'count', count: 1, of: 'crosses' }, '1 X mark'],
    [{ kind: 'count', count: 4, of: 'crosses' }, '4 X marks'],
    [time('09:00'), '9 o’clock'],
    [time('12:00'), '12 o’clock'],
    [time('13:30'), 'half past 1'],
    [time('09:20'), '9:20'],
    [time('16:05'), '4:05'],
    [between(cm(12), cm(15)), 'between 12 cm and 15 cm'],
    [between(cm(3), cm(4), { hasLeftOver: true }), '3 cm and a bit more'],
    [between(day('2026-03-03'), day('2026-03-06')), 'about Tuesday 3 March to Friday 6 March'],
    [{ kind: 'word', word: 'something-else' }, 'something else'],
  ] as const)('of %j is %s', (told, text) => {
    expect(answerText(told as Told)).toBe(text);
  });
});

describe('the ladder in words', () => {
  const everyAsked = [...Object.values(sampleLessons), ...lessonsOfMany(150)].flatMap(questionsOf);

  it('says each slip to a grown-up, each in its own words', () => {
    const texts = slipIds.map(slipText);
    expect(new Set(texts).size).toBe(slipIds.length);
    for (const text of texts) expect(text).toMatch(/^[A-Z].*\.$/);
  });

  it('asks, helps and leads further in sentences that begin and end as sentences do', () => {
    for (const question of everyAsked) {
      for (const text of [questionText, easierText, stretchText].map((say) => say(question))) {
        expect(text).toMatch(/^[A-Z“\d].*[.?]$/);
        // No raw names of the program, no space too many, nothing said as a decimal.
        expect(text).not.toMatch(/undefined|null|NaN|[a-z]-[a-z]+-|\s\s|\s[.,?]|\d\.\d/);
      }
      const [asked, easier, further] = [questionText, easierText, stretchText].map((say) =>
        say(question),
      );
      expect(new Set([asked, easier, further]).size).toBe(3);
    }
  });

  it('gives no answer away in an easier or a further way', () => {
    for (const question of everyAsked) {
      const answer = answerText(question.answer);
      if (question.template === 'H9') continue;
      for (const text of [easierText(question), stretchText(question)]) {
        if (text.includes(answer)) throw new Error(`${text} = ${answer}`);
      }
    }
  });

  it('says one of a thing and several as they are said', () => {
    const said = everyAsked.flatMap((question) => [
      ...[questionText, easierText].map((say) => say(question)),
      answerText(question.answer),
    ]);
    const odd = said.filter((text) =>
      /(?<![\d/ ])\b1 (inches|days|readings|times|steps|feet|sunny days|X marks)\b/.test(text),
    );
    expect(odd).toEqual([]);
    expect(
      said.filter((text) => /(?<![\d/])([2-9]|\d\d+) (inch|day|reading|time|foot)\b/.test(text)),
    ).toEqual([]);
  });
});
