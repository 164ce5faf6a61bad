import { describe, expect, it } from 'vitest';
import { addDays, civilDay } from '#core/calendar';
import type { EntryDraft, Notebook, PersonId, ReviewAnswered, ReviewOutcome } from '#core/journal';
import { foldEntries } from '#core/journal';
import {
  answeredOn,
  chosenItem,
  decodeReviewItem,
  isRegrouped,
  logSumsOf,
  reviewFactsOf,
  reviewFor,
  reviewPicks,
  reviewSheet,
  sumAnswer,
  sumRange,
  sumTold,
  type ReviewItem,
  type ReviewOptions,
  type Sum,
} from '#core/lessons';
import { drawRight } from '#core/graphs';
import { stages, type Stage } from '#core/journal';
import { exactPerUnit } from '#core/measure';
import { notebookOf, specimenId, sibling, type Line } from '../graphs/small-notebook';
import { sampleNotebook, sampleToday } from '../graphs/sample-logs';
import { child } from '../journal/entries';

const cm: ReviewOptions = { stage: 'grade-2', family: 'centimetres' };
const empty = foldEntries([]);
const day = civilDay;

/** Numbers from 2 March 2026, a Monday, on; null is a day nothing was written for. */
const days = (numbers: readonly (string | null)[], more: Partial<Line> = {}): Line[] =>
  numbers.flatMap((read, index) =>
    read === null ? [] : [{ day: addDays(day('2026-03-02'), index), read, ...more }],
  );
const sumsOf = (notebook: Notebook, stage: Stage = 'grade-2'): readonly Sum[] =>
  logSumsOf(notebook, stage, day('2026-03-31'));
const told = (sums: readonly Sum[]) =>
  new Set(sums.map(({ start, change, result }) => `${start}+${change}=${result}`));

const items = (page: ReturnType<typeof reviewFor>): readonly ReviewItem[] =>
  page.flatMap((place) => ('task' in place ? [place] : []));

const answered = (
  item: ReviewItem,
  on: string,
  outcome: ReviewOutcome,
  author: PersonId | null = child,
): ReviewAnswered =>
  ({
    ...{ item: { ...reviewSheet(item) }, answer: '', outcome, author, day: day(on) },
    ...{ takenBack: null, at: on, id: `${item.name} ${on}` },
  }) as unknown as ReviewAnswered;
const having = (notebook: Notebook, reviews: readonly ReviewAnswered[]): Notebook => ({
  ...notebook,
  reviews,
});

describe('sums of the log', () => {
  it('are of two readings at least three days and at most six days apart', () => {
    const sums = sumsOf(notebookOf({ Bean: days(['2', '3', '5', '9', '11', '14', '16', '21']) }));
    // By hand: 2 March with 5, 6, 7, 8 March; 3 March with 6 to 9; and so on.
    expect(told(sums)).toEqual(
      new Set([
        ...['2+7=9', '2+9=11', '2+12=14', '2+14=16'],
        ...['3+8=11', '3+11=14', '3+13=16', '3+18=21'],
        ...['5+9=14', '5+11=16', '5+16=21', '9+7=16', '9+12=21', '11+10=21'],
      ]),
    );
  });

  it('never use a blank day, a day read twice, or part of a unit', () => {
    const lines = [
      ...days(['2', null, null, '9']),
      { day: '2026-03-06', read: '11' },
      { day: '2026-03-06', read: '12' },
      { day: '2026-03-07', read: '13.5', mark: '1 mm' as const },
    ];
    expect(told(sumsOf(notebookOf({ Bean: lines })))).toEqual(new Set(['2+7=9']));
  });

  it('never mix units or marks', () => {
    const lines = [
      ...days(['2', null, null, '4']),
      { day: '2026-03-06', read: '5', unit: 'in' as const },
      { day: '2026-03-07', read: '90', unit: 'mm' as const },
    ];
    expect(told(sumsOf(notebookOf({ Bean: lines })))).toEqual(new Set(['2+2=4']));
  });

  it('never use a number that is doubted: 60 in a row of small ones', () => {
    const notebook = notebookOf({ Bean: days(['2', '3', '4', '5', '6', '60', '8', '9', '10']) });
    const numbers = sumsOf(notebook).flatMap(({ start, result }) => [start, result]);
    expect(numbers.length).toBeGreaterThan(0);
    expect(numbers).not.toContain(60);
  });

  it('never use a rain total of several days, and put single days together', () => {
    const lines = [
      { day: '2026-03-02', read: '4' },
      { day: '2026-03-05', read: '9', spanDays: 3 },
      { day: '2026-03-06', read: '8' },
      { day: '2026-03-07', read: '0' },
    ];
    const notebook = notebookOf({ Gauge: lines }, { quantity: 'rain', unit: 'mm', mark: '1 mm' });
    const sums = sumsOf(notebook);
    expect(told(sums)).toEqual(new Set(['4+8=12']));
    expect(new Set(sums.map(({ unknown }) => unknown))).toEqual(
      new Set(['start', 'change', 'result']),
    );
  });

  it('hold two shadows of one day against each other, never of two days', () => {
    const lines = [
      { day: '2026-03-02', read: '95', time: '09:00' },
      { day: '2026-03-02', read: '41', time: '12:00' },
      { day: '2026-03-03', read: '60', time: '12:00' },
    ];
    const notebook = notebookOf({ Stick: lines }, { quantity: 'shadow' });
    const sums = sumsOf(notebook);
    expect(told(sums)).toEqual(new Set(['41+54=95']));
    expect(sums.map(({ story, unknown }) => [story, unknown])).toEqual([
      ['more', 'change'],
      ['more', 'result'],
    ]);
  });

  it('count the days of kinds', () => {
    const words = ['sun', 'sun', 'sun', 'rain', 'sun', 'sun'];
    const lines = words.map((word, index) => ({
      day: addDays(day('2026-03-02'), index),
      word,
    }));
    const notebook = notebookOf(
      { Sky: lines },
      { quantity: 'daily-kind', unit: 'count', mark: '1', kinds: ['sun', 'rain', 'snow'] },
    );
    // Asked for the difference, 4; or for the sunny days. "1 more" twice would tell the answer.
    expect(told(sumsOf(notebook))).toEqual(new Set(['1+4=5']));
  });

  it('never ask for 0, nor for what the story tells or the calendar shows', () => {
    for (const sum of logSumsOf(sampleNotebook, 'grade-3', sampleToday)) {
      const shown = [sum.first, sum.second].flatMap((each) =>
        each.kind === 'day' ? [Number(each.day.slice(8))] : [],
      );
      expect(sumAnswer(sum)).toBeGreaterThan(0);
      expect([...sumTold(sum), ...shown]).not.toContain(sumAnswer(sum));
    }
  });

  it('add up, of whole numbers that stand in the log, within the range of the stage', () => {
    // Common Core, from memory: grade 1 within 20, grade 2 within 100, grade 3 within 1000.
    const most = { 'grade-1': 20, 'grade-2': 1000, 'grade-3': 1000 };
    for (const stage of stages) {
      const sums = logSumsOf(sampleNotebook, stage, sampleToday);
      expect(sums.length).toBeGreaterThan(10);
      for (const sum of sums) {
        expect(sum.start + sum.change).toBe(sum.result);
        expect(sum.result).toBeLessThanOrEqual(most[stage]);
        if (sum.story !== 'grew') continue;
        const log = sampleNotebook.logBySpecimen.get(sum.specimen!)!;
        for (const [when, number] of [
          [sum.first, sum.start],
          [sum.second, sum.result],
        ] as const) {
          const read = log.readings.filter(
            (each) => when.kind === 'day' && each.day === when.day && !each.takenBack,
          );
          expect(read.map(({ counted }) => counted.exact)).toEqual([
            number * exactPerUnit(sum.unit),
          ]);
        }
      }
    }
  });

  it('within 1000 in grade 2 only where they can be laid out: millimetres, and shadows', () => {
    const sum = { start: 80, change: 40, result: 120, thing: 'height' } as const;
    expect(sumRange({ ...sum, unit: 'cm' }, 'grade-2')).toBeNull();
    expect(sumRange({ ...sum, unit: 'mm' }, 'grade-2')).toBe('G2c');
    expect(sumRange({ ...sum, unit: 'cm', thing: 'shadow' }, 'grade-2')).toBe('G2c');
    expect(sumRange({ ...sum, unit: 'cm' }, 'grade-3')).toBe('G3');
  });
});

describe('a page of the review', () => {
  it('has five places where no log is running, and six where one wants a reading today', () => {
    expect(reviewFor(sampleNotebook, null, sampleToday, cm).map(({ kind }) => kind)).toEqual([
      ...['graph-read', 'ruler', 'sum', 'from-before', 'choice'],
    ]);
    const growing = notebookOf({ Bean: days(['2', '3', '5', '9', '11']) });
    const page = reviewFor(growing, child, day('2026-03-09'), cm);
    expect(page[0]).toEqual({
      kind: 'measure-today',
      logs: [{ specimen: specimenId(0), isTaken: false }],
    });
    expect(page).toHaveLength(6);
  });

  it('is the same all day, whatever is measured on it, and another the next day', () => {
    const before = days(['2', '3', '5', '9', '11', '14', '16', '21', '22', '24']);
    const today = day('2026-03-12');
    const measured = [...before, { day: '2026-03-12', read: '27' }];
    const [first, later] = [before, measured].map((lines) =>
      reviewFor(notebookOf({ Bean: lines }), child, today, cm),
    );
    expect(items(later!)).toEqual(items(first!));
    expect(later![0]).toMatchObject({ logs: [{ isTaken: true }] });
    const next = reviewFor(notebookOf({ Bean: before }), child, addDays(today, 1), cm);
    expect(items(next)).not.toEqual(items(first!));
    const sister = reviewFor(notebookOf({ Bean: before }), sibling, today, cm);
    expect(items(sister)).not.toEqual(items(first!));
  });

  it('stays the same while it is answered', () => {
    const page = items(reviewFor(sampleNotebook, child, sampleToday, cm));
    const done = page.map((item) => answered(item, sampleToday, 'again'));
    expect(items(reviewFor(having(sampleNotebook, done), child, sampleToday, cm))).toEqual(page);
    expect(
      answeredOn(having(sampleNotebook, done), child, sampleToday).map(({ name }) => name),
    ).toEqual(page.map(({ name }) => name));
    expect(answeredOn(having(sampleNotebook, done), sibling, sampleToday)).toEqual([]);
  });

  it('brings back what was missed on the next school day, for that child only', () => {
    const thursday = day('2026-04-30');
    const page = items(reviewFor(sampleNotebook, child, thursday, cm));
    const missed = having(
      sampleNotebook,
      page.map((item) => answered(item, thursday, 'again')),
    );
    const names = (who: PersonId, on: string) =>
      items(reviewFor(missed, who, day(on), cm)).map(({ name }) => name);
    expect(new Set(names(child, '2026-05-04'))).toEqual(new Set(page.map(({ name }) => name)));
    const early = names(child, '2026-05-01');
    expect(page.filter(({ name }) => early.includes(name))).toEqual([]);
    const other = names(sibling, '2026-05-04');
    expect(page.every(({ name }) => other.includes(name))).toBe(false);
  });

  it('lets what was right rest for two school days', () => {
    const monday = '2026-04-27';
    const sum = items(reviewFor(sampleNotebook, child, day(monday), cm)).find(
      ({ task }) => task.of === 'sum',
    )!;
    const right = having(sampleNotebook, [answered(sum, monday, 'rest')]);
    const on = (date: string) =>
      items(reviewFor(right, child, day(date), cm)).some(({ name }) => name === sum.name);
    expect([on('2026-04-28'), on('2026-04-29')]).toEqual([false, true]);
  });

  it('does not ask again what the log does not say any more', () => {
    const lines = days(['2', '3', '5', '9', '11', '14', '16', '21', '22', '24']);
    const today = day('2026-03-12');
    const log = notebookOf({ Bean: lines });
    // By how much the side goes up does not hang on the numbers that were put right.
    const hangsOnNumbers = ({ task }: ReviewItem): boolean =>
      task.of === 'sum' || (task.of === 'question' && task.question.template !== 'R7');
    const missed = [cm, { ...cm, schoolWeekdays: [1, 3] }]
      .flatMap((options) => items(reviewFor(log, child, today, options)))
      .filter(hangsOnNumbers)
      .map((item) => answered(item, today, 'again'));
    const next = (notebook: Notebook) =>
      items(reviewFor(having(notebook, missed), child, day('2026-03-16'), cm)).map(
        ({ name }) => name,
      );
    const names = missed.map(({ item }) => item['name'] as string);
    expect(names.filter((name) => next(log).includes(name))).toEqual(names);
    const mended = notebookOf({ Bean: lines.map((line) => ({ ...line, read: '7' })) });
    expect(names.filter((name) => next(mended).includes(name))).toEqual([]);
  });

  it('takes made-up numbers, and says so, where the log is too young', () => {
    for (const stage of stages) {
      const page = items(reviewFor(empty, null, sampleToday, { ...cm, stage }));
      expect(page).toHaveLength(4);
      for (const { task } of page) {
        if (task.of === 'sum') {
          expect(task.sum.isPractice).toBe(true);
          expect(sumRange(task.sum, stage)).not.toBeNull();
        }
        if (task.of === 'question') expect(task.about.kind).toBe('practice');
      }
    }
  });

  it('never shows the graph of a log that a child is drawing just now', () => {
    const lines = days(['2', '3', '5', '9', '11', '14', '16', '21', '22', '24']);
    const log = notebookOf({ Bean: lines });
    const draft = {
      ...{ investigation: [...log.investigations.keys()][0]!, choice: {}, finishedAt: null },
      versions: [],
    };
    const drawing = { ...log, drawings: new Map([['d', draft]]) } as unknown as Notebook;
    const asked = items(reviewFor(drawing, child, day('2026-03-12'), cm)).flatMap(({ task }) =>
      task.of === 'question' ? [task.about.kind] : [],
    );
    expect(asked).toEqual(['practice']);
  });

  it('has a sum with regrouping every other school day, and the unknown in different places', () => {
    const schoolDays = Array.from({ length: 20 }, (_, index) =>
      addDays(day('2026-05-04'), 7 * Math.floor(index / 4) + (index % 4)),
    );
    const found = schoolDays.flatMap((each) =>
      items(reviewFor(sampleNotebook, child, each, cm)).flatMap(({ task }) =>
        task.of === 'sum' ? [task.sum] : [],
      ),
    );
    const first = isRegrouped(found[0]!);
    expect(found.map(isRegrouped)).toEqual(found.map((_, index) => first === (index % 2 === 0)));
    for (const place of ['start', 'change', 'result'] as const)
      expect(found.filter(({ unknown }) => unknown === place).length).toBeGreaterThan(3);
  });

  it('has a task off zero at least once in each school week', () => {
    for (let week = 0; week < 3; week += 1) {
      const tasks = [0, 1, 2, 3].flatMap((weekday) =>
        items(
          reviewFor(sampleNotebook, child, addDays(day('2026-05-04'), 7 * week + weekday), cm),
        ).flatMap(({ task }) => (task.of === 'ruler' ? [task.ruler.kind] : [])),
      );
      expect(new Set(tasks)).toEqual(new Set(['off-zero', 'between-marks']));
    }
  });

  it('asks about a graph only what the graph of that day answers, and the graph can be drawn', () => {
    for (let back = 0; back < 60; back += 12) {
      for (const stage of stages) {
        const today = addDays(sampleToday, -back);
        for (const { task } of items(reviewFor(sampleNotebook, child, today, { ...cm, stage }))) {
          if (task.of !== 'question') continue;
          const facts = reviewFactsOf(sampleNotebook, task.about);
          if (!facts.ok) throw new Error(facts.error.kind);
          expect(drawRight(facts.value.right).kind).toBe(facts.value.graph);
          if (task.choices) expect(task.choices).toContainEqual(task.question.answer);
          if (task.about.kind === 'log') expect(task.about.through < today).toBe(true);
        }
      }
    }
  });
});

describe('what a child chooses', () => {
  it('is of the kind that was chosen, another each time, and none of the page', () => {
    const page = items(reviewFor(sampleNotebook, child, sampleToday, cm)).map(({ name }) => name);
    for (const pick of reviewPicks) {
      const chosen = [0, 1, 2].map((round) =>
        chosenItem(sampleNotebook, child, sampleToday, cm, pick, round),
      );
      for (const item of chosen) {
        expect([item.kind, item.task.of]).toEqual(['choice', pick]);
        expect(page).not.toContain(item.name);
      }
      expect(new Set(chosen.map(({ name }) => name)).size).toBe(3);
    }
  });
});

describe('an item that was kept', () => {
  const pages = stages.flatMap((stage) => [
    ...items(reviewFor(sampleNotebook, child, sampleToday, { ...cm, stage })),
    ...items(reviewFor(empty, child, sampleToday, { ...cm, stage, family: 'inches' })),
  ]);

  it('is read back as it was, through a file', () => {
    for (const item of pages) {
      const sheet: unknown = JSON.parse(JSON.stringify(reviewSheet(item)));
      expect(decodeReviewItem(sheet)).toEqual({ ok: true, value: item });
    }
  });

  it('is refused with the part that is not right', () => {
    const sheetOf = (of: string) =>
      structuredClone(reviewSheet(pages.find(({ task }) => task.of === of)!)) as Record<
        string,
        Record<string, unknown>
      >;
    const part = (sheet: unknown) => {
      const decoded = decodeReviewItem(sheet);
      return decoded.ok ? null : decoded.error.part;
    };
    const sum = sheetOf('sum');
    expect(part({ ...sum, sum: { ...sum['sum'], start: 99 } })).toBe('sum');
    expect(part({ ...sum, kind: 'quiz' })).toBe('kind');
    const ruler = sheetOf('ruler');
    expect(part({ ...ruler, task: { ...ruler['task'], beginsExact: -1 } })).toBe(
      'task.beginsExact',
    );
    const question = sheetOf('question');
    expect(part({ ...question, question: { template: 'Z1' } })).toBe('question.template');
    expect(part({ of: 'tea' })).toBe('of');
    expect(part(null)).toBe('');
  });

  it('is not counted when it was taken back or cannot be read', () => {
    const item = pages[0]!;
    const back = { ...answered(item, sampleToday, 'rest'), takenBack: {} } as ReviewAnswered;
    const strange = { ...answered(item, sampleToday, 'rest'), item: { of: 'tea' } };
    expect(answeredOn(having(empty, [back, strange]), child, sampleToday)).toEqual([]);
  });
});

// The type is used so that a draft of a review stays one that a journal takes.
const draft: EntryDraft = {
  ...{ kind: 'review-answered', day: sampleToday, answer: '5 cm', outcome: 'rest' },
  item: { ...reviewSheet({ kind: 'sum', name: 'a', task: { of: 'sum', sum: {} as Sum } }) },
};
it('is written as a journal takes it', () => expect(draft.kind).toBe('review-answered'));
