export { default as LessonPaperPage } from './LessonPaperPage.svelte';
