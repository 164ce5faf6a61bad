/** What stands beside a pad, and is sent after it. */
export { parseErrorWords } from '#ui/words';
export { default as BelowPad } from './BelowPad.svelte';
export { default as RulerBeside } from './RulerBeside.svelte';
