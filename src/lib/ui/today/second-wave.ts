/**
 * What Today needs after its first press. It is asked for as soon as the page is there, not on
 * demand: it must be on the device when the network is gone.
 */
export { DoubtBox, DoubtDesk, QuestionBox, questionsBefore } from '#ui/asking';
export { default as MoreCautions } from './MoreCautions.svelte';
export { default as TodayKind } from './TodayKind.svelte';
export { default as TodayWritten } from './TodayWritten.svelte';
export { areLeavesDue } from './leaves-due';
