import { describe, expect, it } from 'vitest';
import { civilDay, type CivilDay } from '#core/calendar';
import { graphKinds, standardCodes, tableSources, type MistakeId } from '#core/graphs';
import { foldEntries, quantities, stages, type Notebook } from '#core/journal';
import {
  featureIds,
  lessonBlocks,
  lessonPlanOf,
  materialIds,
  purposeIds,
  purposesReady,
  wordIds,
  type Lesson,
  type LessonBlock,
} from '#core/lessons';
import { lessonFactsOf } from '#core/questions';
import {
  blockHeading,
  blockText,
  featureText,
  lessonTitle,
  materialText,
  purposeText,
  standardText,
  watchForText,
  wordText,
} from '#ui/lesson-words';
import { openerText } from '../../../src/lib/ui/lesson-words/opener-words';
import { sampleNotebook, sampleToday } from '../../core/graphs/sample-logs';
import { entriesUntil } from '../../core/lessons/made-lessons';

const noChanges = { madeOn: null, title: null, texts: {}, questions: null, own: [] };
const mistakeIds = Object.entries({ P: 13, B: 16, L: 15, T: 14 }).flatMap(([letter, count]) =>
  Array.from({ length: count }, (_, index) => `${letter}${index + 1}` as MistakeId),
);

const lessonsOf = (notebook: Notebook, today: CivilDay): readonly Lesson[] =>
  stages.flatMap((stage) =>
    [...notebook.investigations.keys()].flatMap((investigation) =>
      purposesReady(notebook, { investigation }, stage, today)
        .flatMap(({ purpose, otherTables, ...best }) =>
          [best, ...otherTables].map((table) => ({ purpose, ...table })),
        )
        .filter(({ missing }) => missing.length === 0)
        .flatMap(({ purpose, choice }) => {
          const facts = lessonFactsOf(notebook, choice, purpose.graph, stage, today);
          if (!facts.ok) throw new Error(JSON.stringify(facts.error));
          return ([20, 40] as const).map((minutes) => {
            const plan = lessonPlanOf(facts.value, { purpose: purpose.id, minutes, seed: 2 });
            const record = { minutes, stage };
            const made = { purpose, facts: facts.value, plan, record, changes: noChanges };
            return { ...made, questions: [], spare: [], withdrawn: [] } as unknown as Lesson;
          });
        }),
    ),
  );

/**
 * Every lesson of the made-up notebook that is ready, at every stage: while its logs go on, and
 * after they ended.
 */
const everyLesson = [
  ...lessonsOf(foldEntries(entriesUntil('2026-03-27')), civilDay('2026-03-27')),
  ...lessonsOf(foldEntries(entriesUntil('2026-04-24')), civilDay('2026-04-24')),
  ...lessonsOf(sampleNotebook, sampleToday),
];

describe('the words of a lesson', () => {
  it('are there for every id, each its own', () => {
    const catalogues = [
      purposeIds.map(purposeText),
      standardCodes.map(standardText),
      featureIds.map(featureText),
      materialIds.map(materialText),
      wordIds.map((id) => wordText(id).word),
      wordIds.map((id) => wordText(id).says),
      mistakeIds.map(watchForText),
      lessonBlocks.map(blockHeading),
    ];
    for (const catalogue of catalogues) {
      expect(new Set(catalogue).size).toBe(catalogue.length);
      for (const text of catalogue) expect(text).toMatch(/^[\p{L}\d].*\S$/u);
    }
  });

  it('have an opener for every table and every quantity', () => {
    for (const source of tableSources) {
      for (const quantity of quantities) {
        const lines = openerText(`opener-${source}`, quantity);
        expect(lines.length).toBe(3);
      }
    }
  });

  it('say every block of every lesson the made-up notebook can give', () => {
    expect(everyLesson.length).toBeGreaterThan(60);
    expect(new Set(everyLesson.map(({ plan }) => plan.graph))).toEqual(new Set(graphKinds));
    for (const lesson of everyLesson) {
      expect(lessonTitle(lesson)).toMatch(/^[A-Z].*: \S/);
      for (const block of lessonBlocks) {
        const lines = blockText(lesson, block);
        const isShort = lesson.record.minutes === 20 && block === 'look-and-wonder';
        expect(lines.length > 0, `${lesson.purpose.id} ${block}`).toBe(!isShort);
        expect(lines.join('\n')).not.toMatch(/undefined|NaN|\[object|null|opener-|draw-|{/);
      }
    }
  });

  // A parent reads a plan in two minutes: at 240 words a minute, a usual pace of silent reading
  // (Brysbaert 2019, 238 words a minute for English non-fiction, from memory).
  it('can be read in two minutes, but for lists that are looked up', () => {
    const lookedUp: readonly LessonBlock[] = ['watch-for', 'accept', 'words', 'if-stuck'];
    for (const lesson of everyLesson) {
      const words = lessonBlocks
        .filter((block) => !lookedUp.includes(block))
        .flatMap((block) => blockText(lesson, block))
        .join(' ')
        .split(/\s+/);
      expect(words.length, lesson.purpose.id).toBeLessThanOrEqual(480);
    }
  });

  it('are the grown-up’s own where there are some, line by line, and none where left out', () => {
    const [lesson] = everyLesson as [Lesson];
    const changed = {
      ...lesson,
      changes: { ...noChanges, title: 'Sun!', texts: { opener: 'One.\n\n Two. ', talk: '' } },
    };
    expect(blockText(changed, 'opener')).toEqual(['One.', 'Two.']);
    expect(blockText(changed, 'talk')).toEqual([]);
    expect(blockText(changed, 'draw')).toEqual(blockText(lesson, 'draw'));
    expect(lessonTitle(changed)).toBe('Sun!');
  });

  it('never tell the family’s own numbers while the feature is taught', () => {
    for (const lesson of everyLesson) {
      const said = blockText(lesson, 'teach').join(' ');
      expect(said).toContain('practice numbers, not ours');
      for (const { specimen } of lesson.facts.series) expect(said).not.toContain(specimen.name);
    }
  });
});
