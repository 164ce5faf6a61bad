import type { Page } from '@playwright/test';

/** Puts entries where the notebook looks for them, before a page of it is opened. */
export async function putEntries(
  page: Page,
  entries: readonly Readonly<Record<string, unknown>>[],
): Promise<void> {
  await page.goto('/');
  await page.getByRole('link', { name: 'Begin our own' }).waitFor();
  await page.evaluate(
    (rows) =>
      new Promise<void>((done, broken) => {
        const opening = indexedDB.open('morning-measure');
        opening.onerror = () => broken(opening.error);
        opening.onsuccess = () => {
          const writing = opening.result.transaction('entries', 'readwrite');
          for (const row of rows) writing.objectStore('entries').add(row);
          writing.onerror = () => broken(writing.error);
          writing.oncomplete = () => {
            opening.result.close();
            done();
          };
        };
      }),
    entries,
  );
}
