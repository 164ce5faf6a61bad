import { withBuiltPage } from './served.mjs';

const slowdown = 6;
const presses = 7;

/** The first table of each graph in the made-up notebook. */
const boards = ['Bar graph', 'Line plot (X plot)', 'Line graph', 'Picture graph'];
const ways = { 'One more': pressOneMore, 'a tap': tapColumn };

/**
 * Places marks on all four boards, by "One more" and by a tap on another column, with some marks on
 * the paper already. Medians in milliseconds: `scriptMs` from the press reaching the page until the
 * page is changed, `frameMs` the browser's own work on the next frame (style, layout, paint), and
 * `waitedMs` from the finger until that frame is done, which also holds the browser's passing on of
 * the press and the wait for the screen's own beat.
 */
export const placeAMark = () =>
  withBuiltPage(4186, async (page, address) => {
    await page.addInitScript(() => sessionStorage.setItem('morning-measure:sample', 'yes'));
    await page.addInitScript(listenForPresses);
    const devtools = await page.context().newCDPSession(page);
    const results = [];
    for (const board of boards) {
      await devtools.send('Emulation.setCPUThrottlingRate', { rate: 1 });
      await openBoard(page, `${address}/draw`, board);
      await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
      for (const [way, place] of Object.entries(ways)) {
        const took = [];
        for (let press = 0; press < presses; press += 1) {
          await place(page, press);
          await page.waitForTimeout(600);
          took.push(await page.evaluate(() => window.pressTook));
        }
        results.push({ board, way, ...mediansOf(took) });
      }
    }
    return results;
  });

async function openBoard(page, address, board) {
  await page.goto(address);
  await page.getByRole('article', { name: board }).getByRole('button').first().click();
  const skip = page.getByRole('button', { name: /Use the log’s table/ });
  const marks = page.getByRole('group', { name: 'Parts of your graph' });
  await skip.or(marks).first().waitFor();
  if (await skip.isVisible()) await skip.click();
  await marks.getByRole('button', { name: /Bars|Marks|Points|Pictures/ }).click();
  // Two marks in every other column: an empty board would be quicker than a real one.
  const count = await page.getByRole('slider').count();
  for (let column = 0; column < count; column += 2) {
    await page.getByRole('slider').nth(column).focus();
    await page.keyboard.press('+');
    await page.keyboard.press('+');
  }
}

async function pressOneMore(page, press) {
  const sliders = page.getByRole('slider');
  await sliders.nth(press % (await sliders.count())).focus();
  const button = page.getByRole('button', { name: 'One more' });
  await button.hover();
  await page.waitForTimeout(300);
  await button.click();
}

async function tapColumn(page, press) {
  const sliders = page.getByRole('slider');
  const slider = sliders.nth((press + 1) % (await sliders.count()));
  await slider.scrollIntoViewIfNeeded();
  const box = await slider.boundingBox();
  const isLying = (await slider.getAttribute('aria-orientation')) === 'horizontal';
  const part = isLying ? 0.95 - 0.04 * press : 0.3 + 0.05 * press;
  const x = box.x + box.width * (isLying ? part : 0.5);
  const y = box.y + box.height * (isLying ? 0.5 : part);
  await page.mouse.move(x, y);
  await page.waitForTimeout(300);
  await page.mouse.click(x, y);
}

const mediansOf = (took) =>
  Object.fromEntries(
    Object.keys(took[0]).map((key) => {
      const sorted = took.map((each) => each[key]).sort((one, other) => one - other);
      return [key, sorted[Math.floor(presses / 2)]];
    }),
  );

/** Runs in the page: times every press of a button or a column. */
function listenForPresses() {
  addEventListener(
    'click',
    (event) => {
      if (!event.target.closest('button, [role=slider]')) return;
      window.pressTook = null;
      const began = performance.now();
      let changed = 0;
      const observer = new MutationObserver(() => {
        changed ||= performance.now();
      });
      const everything = { subtree: true, childList: true, attributes: true, characterData: true };
      observer.observe(document.querySelector('main'), everything);
      requestAnimationFrame(() => {
        const frameBegan = performance.now();
        const painted = new MessageChannel();
        painted.port1.onmessage = () => {
          const done = performance.now();
          observer.disconnect();
          if (changed === 0) throw new Error('Nothing was placed');
          window.pressTook = {
            scriptMs: changed - began,
            frameMs: done - frameBegan,
            waitedMs: done - event.timeStamp,
          };
        };
        painted.port2.postMessage(null);
      });
    },
    { capture: true },
  );
}
