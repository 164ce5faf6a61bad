import type { Attachment } from 'svelte/attachments';

/** What has just come in place of what was pressed takes the focus, for eyes and screen readers. */
export const focusOnArrival: Attachment<HTMLElement> = (element) => element.focus();
