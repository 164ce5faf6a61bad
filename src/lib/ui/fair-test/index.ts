export { default as FairTestLink } from './FairTestLink.svelte';
export { default as FairTestPage } from './FairTestPage.svelte';
