import { page } from '$app/state';
import { chooseSpecimen, useNotebook } from '#notebook';
import { lessonSettings, type LessonSettings } from './lesson-settings';

/** The settings of a lesson on this page: of who writes, and of the log that is open. */
export function useLessonSettings(): LessonSettings {
  const { contents, author, memory } = useNotebook();
  const asked = page.url.searchParams.get('of');
  return lessonSettings(contents, author, chooseSpecimen(contents, asked, memory.read('specimen')));
}
