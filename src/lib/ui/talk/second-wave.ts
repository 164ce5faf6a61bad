/** What comes after the first answer: sent right after the question itself. */
export { default as AnswerKept } from './AnswerKept.svelte';
export { default as OwnQuestion } from './OwnQuestion.svelte';
export { default as TalkDone } from './TalkDone.svelte';
export { default as TellGrownUp } from './TellGrownUp.svelte';
export { isLikeLog } from './is-like-log';
