export { asksForHelper, feedbackWords } from './feedback-words';
export { guessQuestion, guessWords } from './guess-words';
export { default as GuessFeedback } from './GuessFeedback.svelte';
export { default as GuessForm } from './GuessForm.svelte';
export { default as HelperPicture } from './HelperPicture.svelte';
export { helperQuestion, helperToTryWords, helperWords } from './helper-words';
