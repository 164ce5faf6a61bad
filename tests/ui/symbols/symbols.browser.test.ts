import '#ui/look';
import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { symbolNames } from '#core/graphs';
import { symbolLook, SymbolPicture, symbolWords } from '#ui/symbols';

/** How many of 4 points in a unit of the 24 by 24 square are filled, in units of that square. */
const filledRoom = (outline: SVGPathElement): number => {
  let inside = 0;
  for (let x = 0.25; x < 24; x += 0.5)
    for (let y = 0.25; y < 24; y += 0.5) if (outline.isPointInFill(new DOMPoint(x, y))) inside += 1;
  return inside / 4;
};

const outlineOf = (container: Element) => container.querySelector<SVGPathElement>('.outline')!;

test.each(symbolNames)('%s stays inside its square, ink and all', async (name) => {
  const { container } = await render(SymbolPicture, { name, size: 25 });
  for (const path of container.querySelectorAll<SVGPathElement>('svg > path')) {
    const box = path.getBBox();
    const ink = 0.75;
    expect(box.x).toBeGreaterThanOrEqual(-0.5 + (box.width && ink));
    expect(box.x + box.width).toBeLessThanOrEqual(24.5 - (box.width && ink));
    expect(box.y).toBeGreaterThanOrEqual(-0.5 + (box.height && ink));
    expect(box.y + box.height).toBeLessThanOrEqual(24.5 - (box.height && ink));
  }
});

test('all symbols fill about the same room, so that equal counts make equal rows', async () => {
  const rooms = await Promise.all(
    symbolNames.map(async (name) =>
      filledRoom(outlineOf((await render(SymbolPicture, { name })).container)),
    ),
  );
  const middle = [...rooms].sort((one, other) => one - other)[rooms.length >> 1]!;
  for (const room of rooms) {
    // A quarter more or less of the room is not seen as another size (our own choice).
    expect(room).toBeGreaterThan(middle * 0.75);
    expect(room).toBeLessThan(middle * 1.25);
  }
});

test.each(symbolNames)(
  'half of %s is its left side, cut straight down the middle',
  async (name) => {
    const whole = outlineOf((await render(SymbolPicture, { name })).container);
    const half = outlineOf((await render(SymbolPicture, { name, part: 'half' })).container);
    const box = half.getBBox();
    expect(box.x + box.width).toBeCloseTo(12, 3);
    const differences = [];
    for (let x = 0.25; x < 24; x += 0.5)
      for (let y = 0.25; y < 24; y += 0.5) {
        const point = new DOMPoint(x, y);
        const expected = x < 12 && whole.isPointInFill(point);
        if (half.isPointInFill(point) !== expected) differences.push([x, y]);
      }
    expect(differences).toEqual([]);
  },
);

test('no two symbols share both colour and pattern', () => {
  const pairs = symbolNames.map((name) => `${symbolLook(name).colour} ${symbolLook(name).pattern}`);
  expect(new Set(pairs).size).toBe(symbolNames.length);
});

test('a symbol says its name only where it is asked to', async () => {
  const quiet = await render(SymbolPicture, { name: 'flake' });
  expect(quiet.container.querySelector('svg')).toHaveAttribute('aria-hidden', 'true');
  const named = await render(SymbolPicture, { name: 'flake', part: 'half', named: true });
  await expect.element(named.getByRole('img', { name: 'half a snowflake' })).toBeInTheDocument();
  expect(new Set(symbolNames.map((name) => symbolWords[name].one)).size).toBe(symbolNames.length);
});
