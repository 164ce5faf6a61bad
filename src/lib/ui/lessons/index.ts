export { default as LessonsPage } from './LessonsPage.svelte';
export { default as OpenLesson } from './OpenLesson.svelte';
export { default as PlanPage } from './PlanPage.svelte';
export { default as RunPage } from './RunPage.svelte';
export { lessonAbout, type LessonAbout } from './lesson-about';
