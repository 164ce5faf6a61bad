export { default as LessonPaperPage } from './LessonPaperPage.svelte';
export { default as FittedPicture } from './FittedPicture.svelte';
