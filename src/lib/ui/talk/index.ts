export { default as TalkPage } from './TalkPage.svelte';
