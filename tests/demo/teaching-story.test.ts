import { describe, expect, it } from 'vitest';
import { isDrawingFinished } from '#core/graphs';
import { foldEntries, type EntryKind } from '#core/journal';
import { evidenceOf, keptSamples, lessonOf } from '#core/lessons';
import { sampleJournal } from '../../demo/sample-family';
import { teachingEntries } from '../../demo/teaching-story';

/** What only this story writes. */
const ofTeaching: ReadonlySet<string> = new Set<EntryKind>([
  ...(['lesson-made', 'lesson-changed', 'lesson-given', 'question-answered'] as const),
  ...(['question-written', 'review-answered', 'evidence-noted'] as const),
  ...(['drawing-begun', 'drawing-saved', 'drawing-finished'] as const),
]);
const before = sampleJournal().filter(({ kind }) => !ofTeaching.has(kind));
const [wren, pip, grownUp] = [...foldEntries(before).people.keys()];
if (!wren || !pip || !grownUp) throw new Error('The family comes first');
const family = { wren, pip, grownUp };
const story = teachingEntries(before, family);
const notebook = foldEntries([...before, ...story]);

describe('the story of teaching in the made-up notebook', () => {
  it('is the same each time it is told, and all of it is understood', () => {
    expect(teachingEntries(before, family)).toEqual(story);
    expect(notebook.notUnderstoodCount).toBe(0);
    expect(new Set([...before, ...story].map(({ id }) => id)).size).toBe(
      before.length + story.length,
    );
  });

  it('has three lessons that can be opened, given once, and no question the log does not hold', () => {
    const lessons = [...notebook.lessons.values()];
    expect(lessons.map(({ graph, givenOn }) => [graph, ...givenOn])).toEqual([
      ['bar-graph', '2026-03-19'],
      ['picture-graph', '2026-03-30'],
      ['line-plot', '2026-04-30'],
    ]);
    for (const record of lessons) {
      const lesson = lessonOf(notebook, record);
      expect(lesson).toMatchObject({ ok: true, value: { withdrawn: [] } });
      expect(lesson.ok && lesson.value.questions.length).toBeGreaterThanOrEqual(4);
    }
  });

  it('has a finished drawing of each lesson', () => {
    const drawings = [...notebook.drawings.values()];
    expect(drawings.map(({ graph }) => graph)).toEqual(['bar-graph', 'picture-graph', 'line-plot']);
    expect(drawings.every(isDrawingFinished)).toBe(true);
  });

  it('has evidence of Wren often, sometimes and not yet, three samples, and one piece of nobody', () => {
    const evidence = evidenceOf(notebook, wren, 'grade-2', 'UTC');
    const seen = new Map(evidence.skills.map(({ skill, seen: how }) => [skill.id, how]));
    expect(seen.get('estimates-first')).toBe('often');
    expect(seen.get('draws-bar-graph')).toBe('sometimes');
    expect(seen.get('draws-line-graph')).toBe('not-yet');
    expect(keptSamples(evidence).map(({ day }) => day)).toEqual([
      '2026-04-30',
      '2026-03-30',
      '2026-03-19',
    ]);
    expect(evidence.nobodys).toHaveLength(1);
    expect(evidence.unread).toEqual([]);
  });

  it('has one note about Pip, and nothing of Wren’s beside it', () => {
    const evidence = evidenceOf(notebook, pip, 'grade-1', 'UTC');
    const noted = evidence.skills.flatMap(({ pieces }) => pieces.filter(({ note }) => note));
    expect(noted.map(({ skill }) => skill)).toEqual(['keeps-a-tally']);
    expect(keptSamples(evidence)).toEqual([]);
  });
});
