import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import { standardCodes } from '#core/graphs';
import { furtherStandards, skillIds } from '#core/lessons';
import { dayWords, daysLine } from '../../../src/lib/ui/evidence/evidence-words';
import { skillStandardText } from '../../../src/lib/ui/evidence/standard-words';
import { skillWords } from '../../../src/lib/ui/evidence/skill-words';

const day = (text: string) => civilDay(text);
const today = day('2026-03-09');

describe('the words of evidence', () => {
  it('name every skill once, each with one sentence', () => {
    const names = skillIds.map((id) => skillWords[id].name);
    expect(new Set(names).size).toBe(skillIds.length);
    for (const id of skillIds) expect(skillWords[id].says).toMatch(/^[A-Z].*\.$/);
  });

  it('say what every code asks for, after the grade of the code', () => {
    for (const code of [...standardCodes, ...furtherStandards]) {
      const grade = /^\d/.exec(code)?.[0];
      const says = skillStandardText(code);
      expect(says).toMatch(grade ? new RegExp(`rade ${grade}\\b`) : /^Science/);
    }
  });

  it('tell days by how it was done, alone first, with how many more', () => {
    const days = [
      { day: day('2026-03-06'), how: 'seen' },
      { day: day('2026-03-05'), how: 'alone' },
      { day: day('2026-03-04'), how: 'seen' },
      { day: day('2026-03-03'), how: 'alone' },
    ] as const;
    const tell = (each: typeof today) => dayWords(each, today);
    expect(daysLine(days, tell, { alone: 3, 'with-help': 1, seen: 1 })).toBe(
      'Alone: Thu 5 Mar, Tue 3 Mar; seen: Fri 6 Mar and 1 more day',
    );
    expect(daysLine([], tell, { alone: 3, 'with-help': 1, seen: 1 })).toBe('');
  });

  it('give a day of another year its year', () => {
    expect(dayWords(day('2026-03-06'), today)).toBe('Fri 6 Mar');
    expect(dayWords(day('2025-03-06'), today)).toBe('6 March 2025');
  });
});
