import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import {
  foldEntries,
  stages,
  type EntryDraft,
  type EntryId,
  type JournalEntry,
  type Notebook,
  type SpecimenId,
} from '#core/journal';
import { lessonOf, otherQuestions, purposesReady, type Lesson } from '#core/lessons';
import { isTelling, questionsOf, type AskedQuestion } from '#core/questions';
import { inCm, sampleChoice } from '../graphs/sample-logs';
import { anId, read } from '../journal/entries';
import {
  entriesUntil,
  kept,
  lessonEntries,
  lessonId,
  lessonIn,
  sampleEntries,
  type ToMake,
} from './made-lessons';

const bars: ToMake = {
  ...{ on: '2026-03-20', graph: 'bar-graph', stage: 'grade-2' },
  choice: sampleChoice(
    ...(['day-values', ['Window bean'], ['2026-03-11', '2026-03-20'], inCm] as const),
  ),
  wish: { purpose: 'value-bars', minutes: 40, seed: 3 },
};
const weather: ToMake = {
  ...{ on: '2026-03-20', graph: 'picture-graph', stage: 'grade-2' },
  choice: sampleChoice(
    ...(['weather-days', ['Window bean', 'Shelf bean'], ['2026-03-02', '2026-03-20']] as const),
  ),
  wish: { purpose: 'picture-graph-of-kinds', minutes: 30, seed: 5 },
};
const windowBean = bars.choice.specimens[0] as SpecimenId;

const madeIn = (make: ToMake): readonly JournalEntry[] => [
  ...entriesUntil(make.on),
  ...lessonEntries(make),
];
const asked = ({ questions }: Pick<Lesson, 'questions'>): readonly AskedQuestion[] =>
  questions.flatMap((each) => (each.kind === 'asked' ? [each.question] : []));
const readingOn = (day: string): JournalEntry & { readonly id: EntryId } =>
  sampleEntries.find(
    (entry) =>
      entry.kind === 'reading-taken' && entry['specimen'] === windowBean && entry['day'] === day,
  )!;
const took = (day: string, value: number): EntryDraft => ({
  ...{ kind: 'reading-taken', specimen: windowBean },
  ...{ day: civilDay(day), measured: read(value) },
});
const changed = (to: Record<string, unknown>): EntryDraft => ({
  ...{ kind: 'lesson-changed', lesson: lessonId, to },
});

describe('a lesson that was made', () => {
  it('asks on a later day what it asked on paper, whatever was measured since', () => {
    for (const make of [bars, weather]) {
      const monday = lessonIn(madeIn(make));
      // Everything that the made-up notebook holds from later days.
      const later = lessonIn([...sampleEntries, ...lessonEntries(make)]);
      expect(asked(monday).length).toBeGreaterThan(4);
      expect(later.questions).toEqual(monday.questions);
      expect(later.spare).toEqual(monday.spare);
      expect(later.withdrawn).toEqual([]);
      expect(later.facts.table).toEqual(monday.facts.table);
      expect(later.plan).toEqual(monday.plan);
    }
  });

  it('comes back out of the journal as it was made, whatever it is for', () => {
    const sample = foldEntries(sampleEntries);
    const today = civilDay('2026-05-01');
    let found = 0;
    for (const investigation of sample.investigations.keys()) {
      for (const stage of stages) {
        const offers = purposesReady(sample, { investigation }, stage, today);
        for (const { purpose, choice, missing } of offers) {
          if (missing.length > 0) continue;
          found += 1;
          const wish = { purpose: purpose.id, minutes: 30, seed: 4 } as const;
          const make = { on: today, graph: purpose.graph, stage, choice, wish };
          const lesson = lessonIn(madeIn(make));
          const { read: reads, between, beyond, behind } = lesson.plan.questions;
          expect(asked(lesson)).toEqual([...reads, ...between, ...beyond, ...behind]);
          expect(lesson.withdrawn).toEqual([]);
          // A shadow by the hour is beyond 20, so that grade 1 is asked one question only.
          expect(asked(lesson).length).toBeGreaterThan(0);
        }
      }
    }
    expect(found).toBeGreaterThan(30);
    // Some thirty-five lessons, each made and read again.
  }, 30_000);

  it('is not changed by its own opener, read on the same day, nor by a day written in late', () => {
    const monday = lessonIn(madeIn(bars));
    const since = kept(
      [took('2026-03-20', 13), took('2026-03-15', 6)],
      '2026-03-20',
      '18:00:00',
      2000,
    );
    const tuesday = lessonIn([...madeIn(bars), ...since]);
    expect(tuesday.facts.table).toEqual(monday.facts.table);
    expect(tuesday.questions).toEqual(monday.questions);
  });

  it('withdraws just the questions that a number put right no longer answers so', () => {
    const monday = lessonIn(madeIn(bars));
    const corrected = kept(
      [
        {
          ...{ kind: 'reading-corrected', reading: readingOn('2026-03-20').id },
          to: { day: civilDay('2026-03-20'), measured: read(13) },
        },
      ],
      ...(['2026-03-21', '09:00:00', 2000] as const),
    );
    const tuesday = lessonIn([...madeIn(bars), ...corrected]);
    // The window bean is 14 cm on 20 March in the sample; now it is 13 cm.
    const usesThatDay = (question: AskedQuestion) =>
      question.answer.kind === 'length' &&
      Object.values(question.blanks).some(
        (told) => told.kind === 'day' && told.day === '2026-03-20',
      );
    expect(asked(monday).some(usesThatDay)).toBe(true);
    for (const question of asked(monday).filter(usesThatDay)) {
      expect(tuesday.withdrawn).toContainEqual(question);
    }
    const now = questionsOf(tuesday.facts).map(({ answer, blanks, template }) => ({
      ...{ template, answer, blanks },
    }));
    for (const { answer, blanks, template } of asked(tuesday)) {
      expect(now).toContainEqual({ template, answer, blanks });
    }
    for (const { answer, blanks, template } of tuesday.withdrawn) {
      expect(now).not.toContainEqual({ template, answer, blanks });
    }
    expect(asked(tuesday).length + tuesday.withdrawn.length).toBe(asked(monday).length);
    expect(asked(tuesday).length).toBeGreaterThan(0);
  });

  it('withdraws what rests on a reading that was taken back', () => {
    const back: EntryDraft = { kind: 'entry-taken-back', entry: readingOn('2026-03-20').id };
    const tuesday = lessonIn([...madeIn(bars), ...kept([back], '2026-03-21', '09:00:00', 2000)]);
    expect(tuesday.withdrawn.length).toBeGreaterThan(0);
    for (const { blanks } of asked(tuesday)) {
      for (const told of Object.values(blanks)) {
        expect(told.kind === 'day' && told.day === '2026-03-20' && told).toBe(false);
      }
    }
  });

  it('keeps its questions in the order read, between, beyond, behind, own ones last in each', () => {
    const own = [
      { level: 'read', text: 'Which day is tallest?', answer: 'Friday' },
      { level: 'behind', text: 'Who held the ruler?', answer: 'Wren' },
    ];
    const lesson = lessonIn([
      ...madeIn(bars),
      ...kept([changed({ own })], '2026-03-20', '19:00:00', 2000),
    ]);
    const order = lesson.questions.map((each) =>
      each.kind === 'own' ? `own ${each.level}` : each.question.level,
    );
    const places = ['read', 'own read', 'between', 'beyond', 'behind', 'own behind'];
    expect(order).toEqual(
      order.toSorted((one, other) => places.indexOf(one) - places.indexOf(other)),
    );
    expect(order.filter((each) => each.startsWith('own'))).toEqual(['own read', 'own behind']);
    expect(order[0]).toBe('read');
  });

  it('asks the questions of its plan where none were kept', () => {
    const lesson = lessonIn([
      ...madeIn(bars),
      ...kept([changed({ questions: null })], '2026-03-20', '19:00:00', 2000),
    ]);
    const { read: reads, between, beyond, behind } = lesson.plan.questions;
    expect(asked(lesson)).toEqual([...reads, ...between, ...beyond, ...behind]);
  });

  it('of twenty minutes asks two questions, one of each first level, and offers the others', () => {
    const short = lessonIn(madeIn({ ...bars, wish: { ...bars.wish, minutes: 20 } }));
    expect(asked(short).map(({ level }) => level)).toEqual(['read', 'between']);
    const long = lessonIn(madeIn({ ...bars, wish: { ...bars.wish, minutes: 40 } }));
    const all = [...asked(short), ...short.spare];
    expect(all).toHaveLength(asked(long).length);
    expect(all).toEqual(expect.arrayContaining([...asked(long)]));
  });
});

describe('a lesson that cannot be read', () => {
  const notebook = foldEntries(madeIn(bars));
  const record = notebook.lessons.get(lessonId)!;
  const errorOf = (
    part: Partial<Record<keyof typeof record, unknown>>,
    from: Notebook = notebook,
  ) => {
    const lesson = lessonOf(from, { ...record, ...part } as typeof record);
    return lesson.ok ? null : lesson.error;
  };

  it('says which part it cannot read, and never throws', () => {
    expect(errorOf({ graph: 'pie' })).toEqual({ kind: 'not-a-lesson', part: 'graph' });
    expect(errorOf({ purpose: 'juggling' })).toEqual({ kind: 'not-a-lesson', part: 'purpose' });
    // A purpose of another graph.
    expect(errorOf({ graph: 'line-plot' })).toEqual({ kind: 'not-a-lesson', part: 'purpose' });
    expect(errorOf({ choice: {} })).toEqual({ kind: 'not-a-lesson', part: 'choice.source' });
    expect(errorOf({ changes: [{ own: 'x' }] })).toEqual({
      ...{ kind: 'not-a-lesson', part: 'changes.own' },
    });
  });

  it('says that the log is not there', () => {
    const choice = { ...bars.choice, specimens: [anId<SpecimenId>(999)] };
    expect(errorOf({ choice })).toEqual({ kind: 'no-table' });
  });

  it('is not opened while its investigation is removed', () => {
    const { investigation } = bars.choice;
    const removed = kept(
      [{ kind: 'investigation-removed', investigation }],
      '2026-03-21',
      '09:00:00',
      2000,
    );
    expect(errorOf({}, foldEntries([...madeIn(bars), ...removed]))).toEqual({ kind: 'no-table' });
  });

  it('says that nothing is left to draw when all that was drawn was taken back', () => {
    const back = bars.choice.specimens.flatMap((specimen) =>
      sampleEntries
        .filter((entry) => entry.kind === 'reading-taken' && entry['specimen'] === specimen)
        .map((entry): EntryDraft => ({ kind: 'entry-taken-back', entry: entry.id })),
    );
    const emptied = foldEntries([...madeIn(bars), ...kept(back, '2026-03-21', '09:00:00', 2000)]);
    expect(errorOf({}, emptied)?.kind).toBe('no-graph');
  });
});

describe('what could stand in a question’s place', () => {
  it('is of its level, is not asked yet, and tells no answer of the others', () => {
    for (const make of [bars, weather]) {
      const lesson = lessonIn(madeIn(make));
      let found = 0;
      for (const question of asked(lesson)) {
        const others = asked(lesson).filter((each) => each !== question);
        for (const other of otherQuestions(lesson, question)) {
          found += 1;
          expect(other.level).toBe(question.level);
          expect(other).not.toEqual(question);
          for (const each of others) {
            expect(other.template).not.toBe(each.template);
            expect(isTelling(other, each) || isTelling(each, other)).toBe(false);
          }
        }
      }
      expect(found).toBeGreaterThan(5);
    }
  });

  it('is of another template first', () => {
    const lesson = lessonIn(madeIn(bars));
    for (const question of asked(lesson)) {
      const isSame = otherQuestions(lesson, question).map(
        ({ template }) => template === question.template,
      );
      expect(isSame).toEqual(isSame.toSorted((one, other) => Number(one) - Number(other)));
    }
  });

  it('can be taken one after the other, and the lesson still tells no answer', () => {
    const lesson = lessonIn(madeIn(weather));
    const swapped = asked(lesson).reduce<Pick<Lesson, 'facts' | 'questions'>>((now, question) => {
      const [other] = otherQuestions(now, question);
      if (!other) return now;
      return {
        ...now,
        questions: now.questions.map((each) =>
          each.kind === 'asked' && each.question === question
            ? { kind: 'asked', question: other }
            : each,
        ),
      };
    }, lesson);
    const all = asked(swapped);
    expect(all).not.toEqual(asked(lesson));
    for (const one of all) {
      for (const other of all) {
        if (one !== other) expect(isTelling(one, other)).toBe(false);
      }
    }
  });
});
