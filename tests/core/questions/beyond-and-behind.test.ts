import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import { graphKinds, lookAtDrawing, type TableChoice } from '#core/graphs';
import { stages, type Notebook, type Stage } from '#core/journal';
import {
  flawedPractice,
  lessonFactsOf,
  practiceAskedAbout,
  questionsOf,
  type QuestionId,
} from '#core/questions';
import { notebookOf, sibling, specimenId, thing, type Line } from '../graphs/small-notebook';
import { sampleChoice, sampleNotebook, sampleToday, inCm } from '../graphs/sample-logs';

/** Heights in cm from 2 March on; null is a day that was missed. */
const heights = (numbers: readonly (number | null)[]): readonly Line[] =>
  numbers.map((number, index) => {
    const day = `2026-03-${`${2 + index}`.padStart(2, '0')}`;
    return number === null ? { day, state: 'missed' } : { day, read: `${number}` };
  });
const choiceOf = (
  source: TableChoice['source'],
  [from, to]: readonly [string, string] = ['2026-03-02', '2026-03-31'],
  told: TableChoice['told'] = inCm,
): TableChoice => ({
  ...{ source, investigation: thing, specimens: [specimenId(0)], told, mostKinds: null },
  ...{ from: civilDay(from), to: civilDay(to) },
});
const asked = (
  id: QuestionId,
  notebook: Notebook,
  today: string,
  choice: TableChoice = choiceOf('days-in-order'),
  graph: (typeof graphKinds)[number] = 'line-graph',
  stage: Stage = 'grade-2',
) => {
  const facts = lessonFactsOf(notebook, choice, graph, stage, civilDay(today));
  if (!facts.ok) throw new Error(`no facts: ${JSON.stringify(facts.error)}`);
  return questionsOf(facts.value).filter(({ template }) => template === id);
};
const cm = (number: number) => ({
  ...{ kind: 'length', exact: number * 10_000_000, unit: 'cm', mark: '1 cm' },
});
const grown = notebookOf({ Bean: heights([1, 2, 3, 4, 5, 6, 7, 8]) });
const skyOf = (words: readonly string[]): Notebook =>
  notebookOf(
    {
      Sky: words.map((word, index) => ({
        ...{ day: `2026-03-${`${2 + index}`.padStart(2, '0')}`, word },
      })),
    },
    { quantity: 'daily-kind', unit: 'count', mark: '1', kinds: ['sun', 'cloud', 'rain'] },
  );
const sky = choiceOf('kind-days', undefined, null);

describe('Y1, how tall next time', () => {
  // By hand: 8 cm last, 1 cm a day of late, one day ahead: 8 to 8 + 1 x 2 x 1.
  it('accepts from no growth to twice the growth of late', () => {
    const [question] = asked('Y1', grown, '2026-03-09');
    expect(question?.answer).toEqual({ kind: 'between', low: cm(8), high: cm(10) });
    expect(question?.blanks.day).toEqual({ kind: 'day', day: '2026-03-10' });
  });
  it('is withdrawn below five readings, below seven days, and when nothing grew', () => {
    const after = (numbers: readonly (number | null)[], today: string) =>
      asked('Y1', notebookOf({ Bean: heights(numbers) }), today);
    expect(after([1, null, null, 4, null, null, 7, 8], '2026-03-09')).toEqual([]);
    expect(after([1, 2, 3, 4, 5, 6, 7], '2026-03-08')).toEqual([]);
    expect(after([8, 8, 8, 8, 8, 8, 8, 8], '2026-03-09')).toEqual([]);
  });
  it('is withdrawn while one of the newest numbers is doubted', () => {
    const slip = notebookOf({ Bean: heights([1, 2, 3, 4, 5, 6, 7, 80]) });
    expect(asked('Y1', slip, '2026-03-09')).toEqual([]);
  });
});

describe('Y2, what was it on a missed day', () => {
  it('accepts what lies between its neighbours, and knows that a blank is not 0', () => {
    const notebook = notebookOf({ Bean: heights([2, 3, null, 6, 7, 8]) });
    const [question, ...more] = asked('Y2', notebook, '2026-03-07');
    expect(question?.answer).toEqual({ kind: 'between', low: cm(3), high: cm(6) });
    expect(question?.slips[0]).toEqual({ told: cm(0), shows: 'blank-is-zero' });
    expect(more).toEqual([]);
  });
  it('is withdrawn over more than three days, between equal neighbours, and in grade 1', () => {
    const over = (numbers: readonly (number | null)[], stage?: Stage) =>
      asked(
        'Y2',
        notebookOf({ Bean: heights(numbers) }),
        '2026-03-09',
        undefined,
        undefined,
        stage,
      );
    expect(over([2, 3, null, null, null, 6, 7, 8])).toEqual([]);
    expect(over([2, 3, null, 3, 4, 5])).toEqual([]);
    expect(over([2, 3, null, 6, 7, 8], 'grade-1')).toEqual([]);
  });
});

describe('Y4 and Y8, about the weather', () => {
  const ten = ['sun', 'sun', 'sun', 'sun', 'sun', 'rain', 'rain', 'rain', 'cloud', 'cloud'];
  const ask = (id: QuestionId, words: readonly string[], stage?: Stage) =>
    asked(id, skyOf(words), '2026-03-20', sky, 'bar-graph', stage);

  it('ask about next month from ten days on', () => {
    expect(ask('Y4', ten)[0]?.answer).toEqual({ kind: 'idea', idea: 'seasons-and-chance' });
    expect(ask('Y4', ten.slice(0, 9))).toEqual([]);
    expect(ask('Y4', ten, 'grade-1')).toEqual([]);
  });
  it('ask for the likely kind only where it leads by two days', () => {
    expect(ask('Y8', ten)[0]?.answer).toEqual({ kind: 'word', word: 'sun' });
    expect(ask('Y8', ten.slice(1))).toEqual([]);
  });
});

describe('Y5 and Y6, of a plant', () => {
  it('ask for 30 cm more in grade 3 alone, while the plant is small', () => {
    const ask = (stage: Stage, numbers: readonly number[]) =>
      asked(
        'Y5',
        notebookOf({ Bean: heights(numbers) }),
        '2026-03-09',
        undefined,
        undefined,
        stage,
      );
    expect(ask('grade-3', [1, 2, 3, 4, 5, 6, 7, 8])[0]?.blanks.more).toEqual(cm(30));
    expect(ask('grade-2', [1, 2, 3, 4, 5, 6, 7, 8])).toEqual([]);
    expect(ask('grade-3', [24, 25, 26, 27, 28, 29, 30, 31])).toEqual([]);
  });
  it('ask about another seed of plants only', () => {
    expect(asked('Y6', grown, '2026-03-09')).toHaveLength(1);
    const length = notebookOf({ Rope: heights([1, 2, 3, 4, 5]) }, { quantity: 'length' });
    expect(asked('Y6', length, '2026-03-09')).toEqual([]);
  });
});

describe('Y7, measured again right now', () => {
  const readBy = (reads: readonly string[]) =>
    notebookOf(
      { Stem: [{ day: '2026-03-02', read: reads[0]!, again: reads.slice(1) }] },
      { quantity: 'length' },
    );
  const oneDay = choiceOf('reads-of-one', ['2026-03-02', '2026-03-02']);
  const ask = (reads: readonly string[]) =>
    asked('Y7', readBy(reads), '2026-03-02', oneDay, 'line-plot');

  it('accepts the range of the plot, from five reads that differ', () => {
    expect(ask(['7', '8', '8', '9', '8'])[0]?.answer).toEqual({
      ...{ kind: 'between', low: cm(7), high: cm(9) },
    });
    expect(ask(['7', '8', '8', '9'])).toEqual([]);
    expect(ask(['8', '8', '8', '8', '8'])).toEqual([]);
  });
});

describe('Y9, where the shadow will be', () => {
  const ask = (clock: readonly (readonly [string, number])[], stage: Stage = 'grade-2') =>
    asked(
      'Y9',
      notebookOf(
        { Stick: clock.map(([time, cm]) => ({ day: '2026-03-02', time, read: `${cm}` })) },
        { quantity: 'shadow' },
      ),
      '2026-03-02',
      choiceOf('hours-in-order', ['2026-03-02', '2026-03-02']),
      'line-graph',
      stage,
    );

  it('is longer in the afternoon and shorter in the early morning, an hour on', () => {
    const [after] = ask([
      ['13:00', 40],
      ['15:00', 60],
    ]);
    expect(after?.answer).toEqual({ kind: 'idea', idea: 'longer-and-further-round' });
    expect(after?.blanks.time).toEqual({ kind: 'time', time: '16:00' });
    const [before] = ask([
      ['08:00', 90],
      ['09:00', 70],
    ]);
    expect(before?.answer).toEqual({ kind: 'idea', idea: 'shorter-and-further-round' });
  });
  it('is withdrawn around noon and after five', () => {
    for (const pair of [
      [['10:00', 50] as const, ['11:00', 40] as const],
      [['15:00', 50] as const, ['16:30', 80] as const],
    ]) {
      expect(ask(pair)).toEqual([]);
    }
  });
});

describe('H2, why there is no mark', () => {
  it('is asked of missed days between readings, never of days not up yet', () => {
    const notebook = notebookOf({
      Bean: [
        { day: '2026-03-02', state: 'not-up-yet' },
        ...heights([0, 0, null, 6, 7, 8, 9])
          .slice(1)
          .map((line, index) => (index === 0 ? { ...line, read: '5' } : line)),
      ],
    });
    const days = asked('H2', notebook, '2026-03-08').map(({ blanks }) => blanks.day);
    expect(days).toEqual([{ kind: 'day', day: '2026-03-04' }]);
  });
});

describe('H3, which of two is right', () => {
  const both = (one: string, other: string) =>
    notebookOf({
      Bean: [
        ...heights([3, 4, 5, 6]),
        { day: '2026-03-06', read: one },
        { day: '2026-03-06', read: other, author: sibling },
      ],
    });
  it('is asked where two people differ by one mark', () => {
    const [question] = asked('H3', both('7', '8'), '2026-03-06');
    expect([question?.blanks.one, question?.blanks.other]).toEqual([cm(7), cm(8)]);
    expect(asked('H3', both('7', '7'), '2026-03-06')).toEqual([]);
    expect(asked('H3', both('6', '8'), '2026-03-06')).toEqual([]);
  });
});

describe('H6, what could trick a reader', () => {
  it('is about practice graphs in which the look finds the planted flaw first', () => {
    for (const kind of graphKinds) {
      for (const stage of stages) {
        for (const seed of [1, 2, 3, 4, 5, 99]) {
          const made = flawedPractice(kind, stage, seed);
          expect(made.isPractice).toBe(true);
          const look = lookAtDrawing(made.right, made.drawing);
          expect(
            look.mistakes.map(({ id }) => id),
            `${kind} ${stage} ${seed}`,
          ).toEqual([made.flaw]);
          expect(flawedPractice(kind, stage, seed)).toEqual(made);
        }
      }
    }
  });
  it('is asked once, and the practice graph is made of the question alone', () => {
    // The table ends on 31 March: 1 + 31 modulo 5 is the second practice graph.
    const [question, ...more] = asked('H6', grown, '2026-03-09');
    expect(more).toEqual([]);
    expect(question?.answer).toEqual({ kind: 'idea', idea: 'flaw-T6' });
    const practice = question && practiceAskedAbout(question);
    expect(practice).toEqual(flawedPractice('line-graph', 'grade-2', 2));
    expect(practice?.table).toEqual(practice?.right.table);
    const [other] = asked('H1', grown, '2026-03-09');
    expect(other ? practiceAskedAbout(other) : null).toBeNull();
  });
});

describe('H9, which cannot be answered', () => {
  it('offers three different questions, one of them impossible', () => {
    const found = asked('H9', grown, '2026-03-09');
    expect(found.length).toBeGreaterThan(0);
    for (const { blanks, answer } of found) {
      const offered = blanks.offered;
      if (offered?.kind !== 'order') throw new Error('nothing is offered');
      expect(new Set(offered.things.map((each) => JSON.stringify(each))).size).toBe(3);
      expect(offered.things).toContainEqual(answer);
    }
  });
});

describe('the made-up notebook', () => {
  const inMarch = sampleChoice(
    'days-in-order',
    ['Window bean'],
    ['2026-03-02', '2026-03-30'],
    inCm,
  );
  const ids = (stage: Stage) => {
    const facts = lessonFactsOf(sampleNotebook, inMarch, 'line-graph', stage, sampleToday);
    if (!facts.ok) throw new Error('no facts');
    return questionsOf(facts.value)
      .filter(({ level }) => level === 'beyond' || level === 'behind')
      .map(({ template, blanks }) =>
        blanks.day?.kind === 'day' ? `${template} ${blanks.day.day}` : template,
      );
  };
  it('H10 asks about the number of 19 March that was crossed out', () => {
    expect(ids('grade-2')).toContain('H10 2026-03-19');
    expect(ids('grade-2').filter((id) => id.startsWith('H10'))).toHaveLength(1);
  });
  it('H1 asks where the ruler began, because the plan says so', () => {
    expect(ids('grade-2')).toContain('H1');
  });
  it('H5 asks whether its planned test was fair', () => {
    expect(ids('grade-2')).toContain('H5');
  });
  it('predicts nothing of a log that has ended', () => {
    expect(ids('grade-2').filter((id) => /^Y[135]/.test(id))).toEqual([]);
  });
});
