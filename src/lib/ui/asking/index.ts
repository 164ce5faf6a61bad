export { DoubtDesk } from './doubt-desk.svelte';
export { default as DoubtBox } from './DoubtBox.svelte';
export { default as QuestionBox } from './QuestionBox.svelte';
export { questionsBefore } from './questions-before';
