export { default as BetweenLesson } from './BetweenLesson.svelte';
export { default as HowLesson } from './HowLesson.svelte';
export { default as PaperTasksPage } from './PaperTasksPage.svelte';
export { default as RulerLessonsPage } from './RulerLessonsPage.svelte';
export { default as SpacesLesson } from './SpacesLesson.svelte';
export { default as ZeroLesson } from './ZeroLesson.svelte';
export { howWords, lessonWords } from './lesson-words';
export { otherNumberWords, rulerRightWords, slipWords, twoNumbersHints } from './slip-words';
