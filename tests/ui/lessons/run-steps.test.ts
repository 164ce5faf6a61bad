import { describe, expect, test } from 'vitest';
import { editDraft } from '../../../src/lib/ui/lessons/lesson-edits';
import { indexOfStep, runSteps } from '../../../src/lib/ui/lessons/run-steps';
import { aLesson, lessonIn, sampleNotebook } from './a-lesson';

describe('the screens of a lesson', () => {
  test('are the parts in order, the questions one by one, and the end', async () => {
    const notebook = await sampleNotebook();
    const lesson = lessonIn(notebook, await aLesson(notebook));
    const keys = runSteps(lesson).map(({ key }) => key);
    expect(keys.slice(0, 6)).toEqual([
      ...['ready', 'opener', 'look-and-wonder', 'teach', 'draw', 'talk'],
    ]);
    expect(keys.slice(6, -2)).toEqual(lesson.questions.map((_, at) => `question-${at + 1}`));
    expect(keys.slice(-2)).toEqual(['sentence', 'end']);
  });

  test('leave out what was left out, the questions with the talk', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    await notebook.write(editDraft(id, { texts: { talk: '', 'look-and-wonder': '' } }));
    expect(runSteps(lessonIn(notebook, id)).map(({ key }) => key)).toEqual([
      ...['ready', 'opener', 'teach', 'draw', 'sentence', 'end'],
    ]);
  });

  test('a place that is gone begins at the start', async () => {
    const notebook = await sampleNotebook();
    const steps = runSteps(lessonIn(notebook, await aLesson(notebook)));
    expect(indexOfStep(steps, 'draw')).toBe(4);
    expect([indexOfStep(steps, 'question-99'), indexOfStep(steps, null)]).toEqual([0, 0]);
  });
});
