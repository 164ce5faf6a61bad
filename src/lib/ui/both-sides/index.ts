export { default as BothSidesPage } from './BothSidesPage.svelte';
export { default as ComparePage } from './ComparePage.svelte';
export { default as SidePad } from './SidePad.svelte';
export { default as TalkCards } from './TalkCards.svelte';
export { bothSidesWords, sideTask } from './both-sides-words';
export { compareWords, compareTalk } from './compare-words';
export { SideRead } from './side-read.svelte';
export { sidesOf } from './sides-of';
export type { TalkCard } from './talk-card';
