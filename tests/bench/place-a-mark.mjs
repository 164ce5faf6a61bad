import { withBuiltPage } from './served.mjs';

const slowdown = 6;

/** Milliseconds from the press of "One more" on a line plot until the page changed, and is painted. */
export const placeAMark = () =>
  withBuiltPage(4186, async (page, address) => {
    await page.addInitScript(() => sessionStorage.setItem('morning-measure:sample', 'yes'));
    await page.goto(`${address}/draw`);
    await page.getByRole('button', { name: 'How much it grew each day' }).first().click();
    await page.getByRole('button', { name: 'One more' }).waitFor();
    const devtools = await page.context().newCDPSession(page);
    await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
    const took = [];
    for (let press = 0; press < 9; press += 1) {
      took.push(await page.evaluate(pressAndMeasure));
      await page.waitForTimeout(1200);
    }
    const median = (key) => took.map((each) => each[key]).sort((a, b) => a - b)[4];
    return { scriptMs: median('scriptMs'), paintMs: median('paintMs') };
  });

/** Runs in the page. */
function pressAndMeasure() {
  return new Promise((resolve) => {
    const button = [...document.querySelectorAll('button')].find((each) =>
      each.textContent.includes('One more'),
    );
    const began = performance.now();
    const observer = new MutationObserver(() => {
      const scriptMs = performance.now() - began;
      observer.disconnect();
      requestAnimationFrame(() =>
        setTimeout(() => resolve({ scriptMs, paintMs: performance.now() - began })),
      );
    });
    observer.observe(document.querySelector('main'), { subtree: true, childList: true });
    button.click();
  });
}
