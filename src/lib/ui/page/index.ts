export { default as CautionList } from './CautionList.svelte';
export { default as Notice } from './Notice.svelte';
export { default as NotebookFrame } from './NotebookFrame.svelte';
export { default as OpenLog } from './OpenLog.svelte';
export { default as ReadAloud } from './ReadAloud.svelte';
export { default as Spoken } from './Spoken.svelte';
export { default as SpecimenChoice } from './SpecimenChoice.svelte';
