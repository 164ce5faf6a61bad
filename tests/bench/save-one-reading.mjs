import { withBuiltPage } from './served.mjs';

/**
 * Milliseconds from the press of "Write it down" until the reading is durable and on the screen,
 * in a notebook that holds `entries` already. Seven readings; the median and the slowest.
 */
export const saveOneReading = (entries) =>
  withBuiltPage(4185, async (page, address) => {
    await page.goto(address);
    await page.waitForSelector('h1');
    await page.evaluate(fillDatabase, entries);
    const specimens = entries.filter((entry) => entry.kind === 'specimen-added');
    const took = [];
    for (const { specimen } of specimens.slice(0, 7)) {
      await page.goto(`${address}/today?of=${specimen}`);
      await page.getByRole('button', { name: 'Measure right away' }).click();
      await page.getByRole('textbox', { name: 'My measure' }).fill('12');
      took.push(await page.evaluate(pressAndWait));
    }
    took.sort((left, right) => left - right);
    return { medianMs: took[3], slowestMs: took[6] };
  });

/** Runs in the page: puts the journal straight into the database the notebook opened. */
function fillDatabase(entries) {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open('morning-measure');
    opening.onerror = reject;
    opening.onsuccess = () => {
      const transaction = opening.result.transaction('entries', 'readwrite');
      const store = transaction.objectStore('entries');
      for (const entry of entries) store.add(entry);
      transaction.onerror = reject;
      transaction.oncomplete = () => {
        opening.result.close();
        resolve(null);
      };
    };
  });
}

/** Runs in the page: presses the button and waits for the words and for the frame that shows them. */
function pressAndWait() {
  return new Promise((resolve) => {
    const began = performance.now();
    const isShown = () => document.body.textContent.includes('It is written down');
    const observer = new MutationObserver(() => {
      if (!isShown()) return;
      observer.disconnect();
      requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - began)));
    });
    observer.observe(document.body, { subtree: true, childList: true, characterData: true });
    [...document.querySelectorAll('button')]
      .find((button) => button.textContent.includes('Write it down'))
      .click();
  });
}
