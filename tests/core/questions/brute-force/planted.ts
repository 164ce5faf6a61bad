import type { AskedQuestion, Told } from '#core/questions';
import { aDayText, sizeOfUnit } from './journal-writer';
import { dayOfNumber, numberOfDay } from './plain-days';
import type { Meddling } from './whole-reading';

/** A mistake planted in a question; null where it cannot be planted. */
export type Planted = (question: AskedQuestion) => AskedQuestion | null;

/** The next one: one thing more, a unit more, a day later. */
const next = (told: Told): Told | null => {
  switch (told.kind) {
    case 'count':
      return { ...told, count: told.count + 1 };
    case 'length':
      return { ...told, exact: told.exact + sizeOfUnit[told.unit] };
    case 'day':
      return { ...told, day: aDayText(dayOfNumber(numberOfDay(told.day) + 1)) };
    case 'days':
      return { ...told, days: told.days.slice(1) };
    case 'interval':
      return { ...told, gapDays: told.gapDays + 1 };
    case 'between': {
      const high = next(told.high);
      return high && { ...told, high };
    }
    case 'order':
      return told.things.length > 1 ? { ...told, things: told.things.toReversed() } : null;
    default:
      return null;
  }
};

/** One less, in the same way. */
const before = (told: Told): Told | null => {
  if (told.kind === 'count') return { ...told, count: told.count - 1 };
  if (told.kind === 'length') return { ...told, exact: told.exact - sizeOfUnit[told.unit] };
  if (told.kind === 'between') {
    const low = before(told.low);
    return low && { ...told, low };
  }
  return null;
};

const withAnswer =
  (change: (told: Told) => Told | null): Planted =>
  (question) => {
    const answer = change(question.answer);
    return answer && { ...question, answer };
  };

const withBlank =
  (names: readonly string[], change: (told: Told) => Told | null): Planted =>
  (question) => {
    const name = names.find((each) => question.blanks[each] !== undefined);
    const told = name === undefined ? undefined : question.blanks[name];
    const changed = told && change(told);
    if (name === undefined || !changed) return null;
    return { ...question, blanks: { ...question.blanks, [name]: changed } };
  };

const swapped =
  (one: string, other: string): Planted =>
  (question) => {
    const [left, right] = [question.blanks[one], question.blanks[other]];
    if (!left || !right) return null;
    return { ...question, blanks: { ...question.blanks, [one]: right, [other]: left } };
  };

/** Mistakes that are always found out, in whatever question they are planted. */
export const plantedInQuestions: Readonly<Record<string, Planted>> = {
  'an answer that is one more': withAnswer(next),
  'an answer that is one less': withAnswer(before),
  'a slip that is the answer': (question) => ({
    ...question,
    slips: [...question.slips, { told: question.answer, shows: 'off-by-one' }],
  }),
  'a range too wide': (question) =>
    question.range === 'G2a' ? { ...question, range: 'G2b' } : null,
  'a range of an older child': (question) =>
    question.range === 'G3' ? null : { ...question, range: 'G3' },
  'a slip that is not what it is called': (question) => {
    const slips = question.slips.flatMap((slip) => {
      const told = slip.shows === 'larger-value' ? next(slip.told) : null;
      return told ? [{ ...slip, told }] : [];
    });
    return slips.length > 0 ? { ...question, slips } : null;
  },
  'a slip no child of the stage can say': (question) => ({
    ...question,
    slips: [...question.slips, { told: { kind: 'count', count: 1001, of: '' }, shows: 'added' }],
  }),
  'a gap that is one day more': withBlank(['gap'], next),
  'kinds told the wrong way round': (question) =>
    question.template === 'C1' ? swapped('more', 'fewer')(question) : null,
  'days told the wrong way round': (question) =>
    question.template === 'C2' ? swapped('more', 'less')(question) : null,
  'plants told the wrong way round': (question) =>
    question.template === 'C13' ? swapped('leader', 'other')(question) : null,
  'a name that tells the number': (question) =>
    question.answer.kind === 'count' && question.template === 'R2'
      ? withBlank(['kind'], () => ({ kind: 'word', word: `${numberOf(question)} boots` }))(question)
      : null,
};

const numberOf = ({ answer }: AskedQuestion): number =>
  answer.kind === 'count' ? answer.count : 0;

/** A program that reads the journal wrongly, and how often at least that must be found out. */
export const plantedInReading: Readonly<Record<string, Meddling>> = {
  'doubts that nobody heeds': { facts: (facts) => ({ ...facts, doubted: new Set() }) },
  'corrections that are not read': {
    entries: (all) => all.filter(({ kind }) => kind !== 'reading-corrected'),
  },
  'takings back that are not read': {
    entries: (all) => all.filter(({ kind }) => kind !== 'entry-taken-back'),
  },
  'repeated reads that are not read': {
    entries: (all) =>
      all.map((entry) => {
        if (entry.kind !== 'reading-taken') return entry;
        const { again: _, ...rest } = entry;
        return rest;
      }),
  },
  'totals taken for one day': {
    entries: (all) =>
      all.map((entry) => (entry.kind === 'reading-taken' ? { ...entry, spanDays: 1 } : entry)),
  },
  'missed days taken for nothing': {
    entries: (all) =>
      all.map((entry) => {
        if (entry.kind !== 'day-marked' || entry.state !== 'missed') return entry;
        const measured = { text: '0', unit: 'cm', mark: '1 cm', exact: 0 } as const;
        const { id, at, device, author, specimen, day } = entry;
        const kind = 'reading-taken' as const;
        return { id, at, device, author, v: 1 as const, kind, specimen, day, measured };
      }),
  },
  'inches taken for centimetres': {
    entries: (all) =>
      all.map((entry) => {
        if (entry.kind !== 'reading-taken' || entry.measured.unit !== 'in') return entry;
        const exact = Math.round(entry.measured.exact / 2.54);
        const measured = { ...entry.measured, unit: 'cm', mark: '1 cm', exact } as const;
        return { ...entry, measured };
      }),
  },
  'numbers of a wider range': {
    facts: (facts) => ({ ...facts, ranges: ['G1', 'G2a', 'G2b', 'G2c', 'G3'] }),
  },
};
