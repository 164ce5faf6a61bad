import { tick } from 'svelte';

/** When what was pressed goes away, the keyboard goes on at what comes next. */
export async function focusOn(find: () => HTMLElement | undefined): Promise<void> {
  await tick();
  find()?.focus();
}
