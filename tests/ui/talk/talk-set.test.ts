import { describe, expect, it } from 'vitest';
import { addDays, civilDay } from '#core/calendar';
import { drawRight } from '#core/graphs';
import { foldEntries, type DrawingId, type JournalEntry, type LessonId } from '#core/journal';
import { answerWayOf, judgeAnswer, questionsOf, sameTold, type Told } from '#core/questions';
import { questionText } from '#ui/ladder-words';
import { answerChoices } from '../../../src/lib/ui/talk/answer-choices';
import { answerKind } from '../../../src/lib/ui/talk/answer-kind';
import { graphShown } from '../../../src/lib/ui/talk/graph-shown';
import { isLikeLog } from '../../../src/lib/ui/talk/is-like-log';
import { helpText } from '../../../src/lib/ui/talk/help-words';
import { numberTold, numberWay } from '../../../src/lib/ui/talk/number-answer';
import { ownTurn } from '../../../src/lib/ui/talk/own-turn';
import { placesTold } from '../../../src/lib/ui/talk/places-told';
import { daySet, lessonSet, ownItems } from '../../../src/lib/ui/talk/talk-set';
import { tapPlaces, tellings } from '../../../src/lib/ui/talk/tap-places';
import { anId } from '../../core/journal/entries';
import {
  asked,
  everyFacts,
  factsCalled,
  later,
  lesson,
  lessonWith,
  sampleEntries,
  wren,
} from './a-talk';

const today = civilDay('2026-05-02');
const notebookWith = (...entries: readonly JournalEntry[]) =>
  foldEntries([...sampleEntries, ...entries]);
const numbersIn = (text: string): readonly string[] => text.match(/\d+(?:\.\d+)?/g) ?? [];
const every = everyFacts.flatMap((facts) =>
  questionsOf(facts).map((question) => ({ facts, question })),
);

describe('every question of the sample', () => {
  it('is told from its help: no help holds the number that is asked for', () => {
    const numberOf = (told: Told): string | null =>
      told.kind === 'count'
        ? String(told.count)
        : told.kind === 'length'
          ? String(told.exact / { cm: 1e7, mm: 1e6, in: 25.4e6 }[told.unit as 'cm' | 'mm' | 'in'])
          : null;
    const told = every.flatMap(({ question }) => {
      const number = numberOf(question.answer);
      const slips = question.slips.map(({ shows }) => ({ kind: 'slip' as const, slip: shows }));
      const inQuestion = numbersIn(questionText(question));
      if (number === null || inQuestion.includes(number)) return [];
      return [...slips, { kind: 'other' as const }]
        .map((judged) => helpText(question, judged))
        .filter((help) => numbersIn(help).includes(number))
        .map((help) => `${question.template}: ${help}`);
    });
    expect(told).toEqual([]);
  });

  it('can be answered on this page so that it is right or heard', () => {
    const unanswerable = every.filter(({ facts, question }) => {
      const { kind } = answerKind(question, tellings(facts));
      const { answer } = question;
      if (kind === 'number') {
        const low = answer.kind === 'between' ? answer.low : answer;
        const way = numberWay(question, facts.stage);
        const number =
          low.kind === 'count'
            ? low.count
            : low.kind === 'length'
              ? low.exact / { cm: 1e7, mm: 1e6, in: 25.4e6 }[low.unit as 'cm' | 'mm' | 'in']
              : NaN;
        const read = numberTold(String(number), way, way.units[0] ?? null);
        return (
          !read.ok || !['right', 'for-a-grown-up'].includes(judgeAnswer(question, read.value).kind)
        );
      }
      if (kind !== 'places') return false;
      const places = tellings(facts).map(({ told }) => told);
      const inAnswer: readonly Told[] =
        answer.kind === 'days'
          ? answer.days.map((day) => ({ kind: 'day', day }))
          : answer.kind === 'interval'
            ? [answer.from, answer.to].map((day) => ({ kind: 'day', day }))
            : [answer];
      const picked = inAnswer.filter((told) => places.some((each) => sameTold(each, told)));
      const gap = answer.kind === 'interval' ? answer.gapDays : null;
      const given = placesTold(answerWayOf(question).by, picked, gap);
      return !given || !['right', 'for-a-grown-up'].includes(judgeAnswer(question, given).kind);
    });
    expect(
      unanswerable.map(({ question }) => `${question.template} ${JSON.stringify(question.answer)}`),
    ).toEqual([]);
  });

  it('is never chosen from only two', () => {
    const few = every
      .filter(({ facts, question }) => answerKind(question, tellings(facts)).kind === 'choices')
      .filter(({ question }) => answerChoices(question).length < 3);
    expect(few.map(({ question }) => question.template)).toEqual([]);
  });

  it('has places to tap wherever a place is the answer', () => {
    const without = every
      .filter(({ facts, question }) => answerKind(question, tellings(facts)).kind === 'places')
      .filter(({ facts }) => tapPlaces(facts, drawRight(facts.right)).length < 3);
    expect(without.map(({ question }) => question.template)).toEqual([]);
  });
});

describe('the choices of a question', () => {
  it('come in the same order each time, and not always with the answer first', () => {
    const questions = every
      .map(({ question }) => question)
      .filter((question) => answerWayOf(question).by === 'words');
    const firsts = questions.map((question) => {
      expect(answerChoices(question)).toEqual(answerChoices(question));
      const { answer } = question;
      const best = answer.kind === 'order' ? answer.things[0]! : answer;
      return sameTold(answerChoices(question)[0]!, best);
    });
    expect(new Set(firsts)).toEqual(new Set([true, false]));
  });
});

describe('what is talked about', () => {
  it('is the lesson that is asked for, else the newest', () => {
    const older = anId<LessonId>(951);
    const notebook = notebookWith(
      ...lessonWith('bars', asked('bars', 'R1'), older, 100),
      ...lessonWith('weather', asked('weather', 'R2'), lesson, 200),
    );
    expect(lessonSet(notebook, null)?.lesson).toBe(lesson);
    expect(lessonSet(notebook, older)?.lesson).toBe(older);
    expect(lessonSet(notebook, older)?.items.map(({ kind }) => kind)).toEqual(['asked']);
    expect(lessonSet(notebookWith(), null)).toBeNull();
  });

  it('without a lesson is a small set that stays the same all day and changes by the day', () => {
    const notebook = notebookWith();
    const bean = [...notebook.specimens.values()].find(({ name }) => name === 'Window bean')!.id;
    const keys = (day: typeof today) =>
      daySet(notebook, bean, { stage: 'grade-2', today: day })?.items.map(({ key }) => key);
    expect(keys(today)).toEqual(keys(today));
    expect(keys(today)!.length).toBeGreaterThan(2);
    expect(keys(today)!.length).toBeLessThanOrEqual(6);
    const week = [0, 1, 2, 3, 4].map((more) => keys(addDays(today, more))!.join());
    expect(new Set(week).size).toBeGreaterThan(2);
  });

  it('is nothing while no graph is ready', () => {
    const notebook = foldEntries([]);
    expect(daySet(notebook, anId(1), { stage: 'grade-2', today })).toBeNull();
  });
});

describe('the graph beside a question', () => {
  const facts = factsCalled('bars');
  const drawing = anId<DrawingId>(960);
  const begin = later(300, {
    ...{ kind: 'drawing-begun', drawing, graph: 'bar-graph', stage: 'grade-2' },
    ...{ investigation: facts.choice.investigation, level: 'frame-given' },
    choice: { ...facts.choice },
  });
  const right = drawRight(facts.right);
  const saved = (paper: object) =>
    later(301, { kind: 'drawing-saved', drawing, paper: { ...paper }, ticked: [] });
  const done = later(302, { kind: 'drawing-finished', drawing });

  it('is the table alone while a drawing of the log is open, however far it is', () => {
    expect(graphShown(notebookWith(begin), facts, wren).kind).toBe('table');
    expect(graphShown(notebookWith(begin, saved(right)), facts, wren).kind).toBe('table');
  });

  it('is the child’s own drawing once it is finished, and says whether it is like the log', () => {
    const shorter = { ...right, bars: right.bars.slice(1) };
    for (const [drawn, isLike] of [[right, true] as const, [shorter, false] as const]) {
      const shown = graphShown(notebookWith(begin, saved(drawn), done), facts, wren);
      if (shown.kind !== 'own') throw new Error(shown.kind);
      expect(shown.drawing.bars).toEqual(drawn.bars);
      expect(isLikeLog(facts, shown.drawing)).toBe(isLike);
    }
  });

  it('is the computer’s for another child, who has not drawn it and has none open', () => {
    expect(graphShown(notebookWith(begin, saved(right), done), facts, null).kind).toBe('computer');
    expect(graphShown(notebookWith(), facts, wren).kind).toBe('computer');
  });
});

describe('questions of one’s own', () => {
  const ids = [1, 2, 3].map((number) => anId<LessonId>(970 + number));
  const made = ids.flatMap((id, index) =>
    lessonWith('bars', asked('bars', 'R1'), id, 400 + index * 10),
  );
  const given = ids.map((id, index) =>
    later(500 + index, { kind: 'lesson-given', lesson: id, day: today }),
  );
  const wrote = (number: number, level: 'read' | 'between', text: string) =>
    later(number, { kind: 'question-written', lesson: ids[2]!, level, day: today, text });

  it('are asked for after the third lesson, first one to read and then one between', () => {
    expect(ownTurn(notebookWith(...made, ...given.slice(0, 2)), wren)).toBeNull();
    const turn = (...more: readonly JournalEntry[]) =>
      ownTurn(notebookWith(...made, ...given, ...more), wren)?.level ?? null;
    expect(turn()).toBe('read');
    expect(turn(wrote(510, 'read', 'How tall was it?'))).toBe('between');
    expect(
      turn(wrote(510, 'read', 'How tall was it?'), wrote(511, 'between', 'How many more?')),
    ).toBeNull();
  });

  it('come up later until they are answered', () => {
    const written = [...made, ...given, wrote(510, 'read', 'How tall was it?')];
    const [own] = ownItems(notebookWith(...written), wren);
    expect(own).toMatchObject({ kind: 'own', text: 'How tall was it?', answer: '' });
    const answered = later(520, {
      ...{ kind: 'question-answered', day: today, answer: '5 cm', how: 'alone' },
      question: { own: { level: 'read', text: 'How tall was it?', answer: '' } },
    });
    expect(ownItems(notebookWith(...written, answered), wren)).toEqual([]);
  });
});
