import { describe, expect, test } from 'vitest';
import { otherQuestions } from '#core/lessons';
import {
  anotherSet,
  editDraft,
  replaced,
  withOwn,
  withoutOwn,
} from '../../../src/lib/ui/lessons/lesson-edits';
import { aLesson, lessonIn, sampleNotebook } from './a-lesson';

const askedIn = (lesson: ReturnType<typeof lessonIn>) =>
  lesson.questions.flatMap((each) => (each.kind === 'asked' ? [each.question] : []));

describe('the questions of a lesson', () => {
  test('one is left out, and the others stay as they were', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    const before = askedIn(lessonIn(notebook, id));
    await notebook.write(editDraft(id, replaced(lessonIn(notebook, id), before[1]!, [])));
    expect(askedIn(lessonIn(notebook, id))).toHaveLength(before.length - 1);
  });

  test('another stands in the place of one, and is of the same level', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    const lesson = lessonIn(notebook, id);
    const between = askedIn(lesson).find(({ level }) => level === 'between')!;
    const other = otherQuestions(lesson, between)[0]!;
    await notebook.write(
      editDraft(
        id,
        replaced(
          lesson,
          askedIn(lesson).find((each) => each === between)!,
          [other],
        ),
      ),
    );
    const after = askedIn(lessonIn(notebook, id));
    expect(after).toContainEqual(other);
    expect(after).not.toContainEqual(between);
    expect(other.level).toBe('between');
  });

  test('another set differs from the one before, and the same press gives the same set', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    const lesson = lessonIn(notebook, id);
    const edit = anotherSet(lesson)!;
    expect(edit.questions).not.toEqual(askedIn(lesson));
    expect(anotherSet(lesson)).toEqual(edit);
    await notebook.write(editDraft(id, edit));
    expect(anotherSet(lessonIn(notebook, id))!.questions).not.toEqual(edit.questions);
  });

  test('of two that are alike only one is taken away', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    const own = { level: 'read', text: 'Why?', answer: '' } as const;
    await notebook.write(editDraft(id, withOwn(lessonIn(notebook, id), own)));
    await notebook.write(editDraft(id, withOwn(lessonIn(notebook, id), own)));
    expect(lessonIn(notebook, id).changes.own).toEqual([own, own]);
    await notebook.write(editDraft(id, withoutOwn(lessonIn(notebook, id), own)));
    expect(lessonIn(notebook, id).changes.own).toEqual([own]);
  });
});
