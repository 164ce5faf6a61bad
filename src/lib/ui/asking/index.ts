export { default as QuestionBox } from './QuestionBox.svelte';
