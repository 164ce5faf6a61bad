import '#ui/look';
import { afterEach, expect, test } from 'vitest';
import { cdp, userEvent } from 'vitest/browser';

const put = (html: string): HTMLElement => {
  document.body.innerHTML = html;
  return document.body.firstElementChild as HTMLElement;
};
const px = (element: Element, property: string): number =>
  parseFloat(getComputedStyle(element).getPropertyValue(property));

afterEach(() => {
  document.body.innerHTML = '';
});

test('grown-up words are 18 pixels or more and child words 20 or more, with 1.5 lines', () => {
  const grown = put('<p>Growth</p>');
  expect(px(grown, 'font-size')).toBeGreaterThanOrEqual(18);
  expect(px(grown, 'line-height') / px(grown, 'font-size')).toBeCloseTo(1.5, 5);

  const child = put('<div class="child-page"><p>My bean</p></div>').firstElementChild!;
  expect(px(child, 'font-size')).toBeGreaterThanOrEqual(20);
});

test.each(['action', 'action primary', 'action quiet', 'stamp'])(
  'a button of class "%s" is at least 48 by 48 pixels',
  (name) => {
    const box = put(`<button class="${name}">+</button>`).getBoundingClientRect();
    expect(box.width).toBeGreaterThanOrEqual(48);
    expect(box.height).toBeGreaterThanOrEqual(48);
  },
);

test.each(['<input type="text">', '<input type="date">', '<select></select>'])(
  '%s is at least 48 pixels high',
  (html) => {
    expect(put(html).getBoundingClientRect().height).toBeGreaterThanOrEqual(48);
  },
);

test('the letters are Andika, served from here, in both weights', async () => {
  await Promise.all(['400', '700'].map((weight) => document.fonts.load(`${weight} 20px Andika`)));
  const loaded = [...document.fonts].filter((face) => face.family.includes('Andika'));
  expect(loaded.map((face) => [face.weight, face.status]).sort()).toEqual([
    ['400', 'loaded'],
    ['700', 'loaded'],
  ]);
});

test('every figure is equally wide in a table, so that columns line up', async () => {
  await document.fonts.load('20px Andika');
  const table = put('<table><tbody><tr><td></td></tr></tbody></table>');
  const widths = Array.from('0123456789', (figure) => {
    table.querySelector('td')!.innerHTML = `<span>${figure.repeat(10)}</span>`;
    return table.querySelector('span')!.getBoundingClientRect().width;
  });
  expect(Math.max(...widths) - Math.min(...widths)).toBeLessThan(0.1);
});

test('what is focused by keyboard has a ring of 3 pixels or more', async () => {
  const button = put('<button class="action">Keep</button>');
  await userEvent.tab();
  expect(document.activeElement).toBe(button);
  expect(getComputedStyle(button).outlineStyle).toBe('solid');
  expect(px(button, 'outline-width')).toBeGreaterThanOrEqual(3);
});

test('on paper the controls are gone and the ink is black on white', async () => {
  document.documentElement.dataset.theme = 'dark';
  const box = put('<div><p>Log</p><button class="action screen-only">Print</button></div>');
  await cdp().send('Emulation.setEmulatedMedia', { media: 'print' });
  try {
    expect(getComputedStyle(box.querySelector('button')!).display).toBe('none');
    expect(getComputedStyle(box.querySelector('p')!).color).toBe('rgb(0, 0, 0)');
    expect(getComputedStyle(document.body).backgroundColor).toBe('rgb(255, 255, 255)');
  } finally {
    await cdp().send('Emulation.setEmulatedMedia', { media: '' });
    delete document.documentElement.dataset.theme;
  }
});

test('nothing moves for someone who asked for less motion', async () => {
  const button = put('<button class="action">Keep</button>');
  expect(px(button, 'transition-duration')).toBeGreaterThan(0.05);
  const features = [{ name: 'prefers-reduced-motion', value: 'reduce' }];
  await cdp().send('Emulation.setEmulatedMedia', { features });
  try {
    expect(px(button, 'transition-duration')).toBeLessThanOrEqual(0.001);
  } finally {
    await cdp().send('Emulation.setEmulatedMedia', { features: [] });
  }
});
