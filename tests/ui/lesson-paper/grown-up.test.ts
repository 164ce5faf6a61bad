import { describe, expect, test } from 'vitest';
import { answerText } from '#ui/ladder-words';
import { grownUpAnswer, slipsOnPaper } from '../../../src/lib/ui/lesson-paper/grown-up-answer';
import { grownUpBlocks, linesOf, nameOf } from '../../../src/lib/ui/lesson-paper/grown-up-blocks';
import { bestPages, grownUpPages } from '../../../src/lib/ui/lesson-paper/grown-up-pages';
import { paperLesson, stagesOf, taughtNames } from './paper-lessons';

const kindsOf = (...asked: Parameters<typeof paperLesson>) =>
  grownUpBlocks(paperLesson(...asked)).map(nameOf);

describe('the parts of a grown-up’s sheets', () => {
  test('have names of their own, every question in its place, and the finished graph last', () => {
    for (const name of taughtNames)
      for (const stage of stagesOf(name)) {
        const lesson = paperLesson(name, { stage });
        const names = grownUpBlocks(lesson).map(nameOf);
        expect(new Set(names).size).toBe(names.length);
        expect(names.filter((each) => each.startsWith('question '))).toEqual(
          lesson.questions.map((_, at) => `question ${at}`),
        );
        expect(names.at(-1)).toBe('finished');
        // The six things a parent's sheet needs.
        for (const part of ['materials', 'words', 'accept', 'if-stuck', 'stop-when', 'watch-for'])
          expect(names).toContain(`${part} 0`);
        expect(names.includes('second-sitting')).toBe(stage === 'grade-1');
      }
  });

  test('take the grown-up’s own words, and leave out what was left out', () => {
    const changes = [{ texts: { talk: 'Talk at the window\nNot long', teach: '', accept: '' } }];
    const lesson = paperLesson('week', { changes });
    expect(linesOf(lesson, 'talk')).toEqual(['Talk at the window', 'Not long']);
    const names = kindsOf('week', { changes });
    expect(names.filter((each) => each.startsWith('talk'))).toEqual(['talk 0', 'talk 1']);
    for (const gone of ['teach 0', 'example', 'accept 0']) expect(names).not.toContain(gone);
    expect(kindsOf('week')).toContain('example');
  });

  test('hold the grown-up’s own question among those of its level', () => {
    const own = [{ level: 'read' as const, text: 'Which bar is bent?', answer: 'None' }];
    const { questions } = paperLesson('week', { changes: [{ own }] });
    const at = questions.findIndex(({ kind }) => kind === 'own');
    expect(at).toBeGreaterThan(-1);
    expect(grownUpAnswer(questions[at]!)).toBe('None');
  });

  test('of a short lesson offer more questions beside its two', () => {
    const lesson = paperLesson('weather', { minutes: 20 });
    expect(lesson.questions).toHaveLength(2);
    expect(kindsOf('weather', { minutes: 20 })).toContain('spare');
  });
});

describe('answers on a grown-up’s sheet', () => {
  test('say the answer, and that a grown-up judges where that is so', () => {
    const asked = taughtNames.flatMap((name) => paperLesson(name).questions);
    for (const each of asked) {
      if (each.kind === 'own') continue;
      const said = grownUpAnswer(each);
      const text = answerText(each.question.answer);
      expect(said.toLowerCase()).toContain(text.toLowerCase());
      if (each.question.level === 'beyond') expect(said).toContain('good reason');
    }
  });

  test('name no forgotten unit where the unit is printed after the blank', () => {
    const slips = taughtNames
      .flatMap((name) => [1, 2, 3, 4].flatMap((seed) => paperLesson(name, { seed }).questions))
      .flatMap((each) => (each.kind === 'asked' ? [each.question] : []));
    expect(slips.some((each) => each.slips.some(({ shows }) => shows === 'forgot-unit'))).toBe(
      true,
    );
    for (const question of slips.filter(({ template }) => template === 'R1' || template === 'C2'))
      expect(slipsOnPaper(question).map(({ shows }) => shows)).not.toContain('forgot-unit');
  });
});

describe('the columns of a grown-up’s sheets', () => {
  const blocks = grownUpBlocks(paperLesson('week'));
  const set = (heightMm: number) =>
    grownUpPages(blocks, { heightMm: () => heightMm, columnMm: 240, overFirstMm: 20 });

  test('begin the questions on a page of their own where that needs no page more', () => {
    const { pages, areQuestionsApart } = set(9);
    expect(areQuestionsApart).toBe(true);
    expect(nameOf(blocks[pages[1]![0]![0]!]!)).toBe('questions');
  });

  test('lets them follow where a page of their own would be one page more', () => {
    const all = [4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14].map((height) => set(height));
    expect(all.some(({ areQuestionsApart }) => !areQuestionsApart)).toBe(true);
    for (const { pages } of all) expect(pages.flat(2)).toEqual(blocks.map((_, index) => index));
  });

  test('of two ways the one with fewer pages is best, then the one with questions apart', () => {
    const way = (pages: number, areQuestionsApart: boolean) => ({
      ...{ pages: Array.from({ length: pages }, () => [[]]), areQuestionsApart },
    });
    const [three, twoFlowing, twoApart] = [way(3, true), way(2, false), way(2, true)];
    expect(bestPages([three, twoFlowing])).toBe(twoFlowing);
    expect(bestPages([twoFlowing, twoApart, three])).toBe(twoApart);
    expect(bestPages([])).toBeNull();
  });
});
