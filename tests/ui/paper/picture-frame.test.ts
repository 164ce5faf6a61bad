import { drawRight, emptyDrawing, turned } from '#core/graphs';
import { describe, expect, test } from 'vitest';
import {
  nameMm,
  pictureEdges,
  pictureFrame,
  wordMm,
} from '../../../src/lib/ui/paper/picture-frame';
import { goldenLogs, goldenRight } from '../../core/graphs/golden-logs';

const heights = drawRight(goldenRight('heights of a week in centimetres'));
const plot = drawRight(goldenRight('ten seedlings in whole inches'));

describe('the frame of a picture', () => {
  test('puts a square as many millimetres from the next as it is wide', () => {
    for (const squareMm of [10, 8, 3]) {
      const frame = pictureFrame(heights, squareMm);
      expect(frame.xOf(4) - frame.xOf(3)).toBeCloseTo(squareMm, 9);
      expect(frame.yOf(3) - frame.yOf(4)).toBeCloseTo(squareMm, 9);
    }
  });

  test('holds all squares and the room for words around them', () => {
    for (const { name } of goldenLogs) {
      const drawing = drawRight(goldenRight(name));
      const { columns, rows } = drawing.paper;
      const frame = pictureFrame(drawing, 10);
      expect(frame.xOf(0)).toBe(frame.edges.left);
      expect(frame.widthMm - frame.xOf(columns)).toBeCloseTo(frame.edges.right, 9);
      expect(frame.yOf(rows)).toBeCloseTo(frame.edges.top, 9);
      expect(frame.heightMm - frame.yOf(0)).toBeCloseTo(frame.edges.bottom, 9);
    }
  });

  test('has room at the right for the numbers, where they stand twice', () => {
    const once = pictureEdges(heights, 10);
    const twice = pictureEdges(heights, 10, { numbersTwice: true });
    expect(twice.right).toBe(once.left);
    expect(once.right).toBeLessThan(once.left);
    // Bars that lie have their numbers along the bottom, and a number line has no side.
    for (const drawing of [turned(heights), plot])
      expect(pictureEdges(drawing, 10, { numbersTwice: true })).toEqual(pictureEdges(drawing, 10));
  });

  test('leaves room to write where nothing is written', () => {
    const empty = emptyDrawing('bar-graph', { columns: 5, rows: 5 });
    // A child of seven writes in lines 10 to 15 mm high (common practice, no source).
    expect(pictureEdges(empty, 10).left).toBeGreaterThanOrEqual(10);
    expect(pictureEdges(empty, 10).bottom).toBeGreaterThanOrEqual(10);
  });

  test('leans names that are too long side by side, and gives them room under the squares', () => {
    const names = (texts: readonly string[]) => ({
      ...emptyDrawing('bar-graph', { columns: 8, rows: 5 }),
      places: texts.map((text, index) => ({ at: 1 + 2 * index, text })),
    });
    expect(pictureFrame(names(['sun', 'rain']), 10).leansNames).toBe(false);
    const long = pictureFrame(names(['measured', 'nothing written']), 10);
    expect(long.leansNames).toBe(true);
    expect(long.edges.bottom).toBeGreaterThan(
      pictureFrame(names(['sun', 'rain']), 10).edges.bottom,
    );
    expect(pictureFrame(names(['sun', 'rain']), 3).leansNames).toBe(true);
  });

  test('writes a name smaller only where it is longer than the room for names', () => {
    expect(nameMm('measured')).toBe(wordMm);
    expect(nameMm('')).toBe(wordMm);
    const long = 'a name of a plant that is much too long';
    expect(nameMm(long)).toBeLessThan(wordMm);
    expect(nameMm(long) * 0.55 * long.length).toBeLessThanOrEqual(38);
  });
});
