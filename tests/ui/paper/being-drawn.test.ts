import { civilDay } from '#core/calendar';
import { describe, expect, test } from 'vitest';
import { isBeingDrawn } from '#core/graphs';
import { drawingRecord, sampleLog, weekOf, withDrawings } from './sample-paper';

const week = weekOf('Window bean');

describe('a finished graph is kept back', () => {
  test('while a child has begun a drawing of the same log, saved or not', () => {
    expect(isBeingDrawn(withDrawings(drawingRecord('one', week)), week)).toBe(true);
    const saved = drawingRecord('one', week, { saved: [{ at: '09', paper: {} }] });
    expect(isBeingDrawn(withDrawings(saved), week)).toBe(true);
  });

  test('while another graph of it is open, or other days of it', () => {
    const other = { ...week, source: 'growth-amounts', to: civilDay('2026-03-24') } as const;
    const open = drawingRecord('one', other, { graph: 'line-plot' });
    expect(isBeingDrawn(withDrawings(open), week)).toBe(true);
  });

  test('no longer, once the child said it was done', () => {
    const done = drawingRecord('one', week, {
      ...{ saved: [{ at: '09', paper: {} }], finished: '10' },
    });
    expect(isBeingDrawn(withDrawings(done), week)).toBe(false);
    expect(isBeingDrawn(withDrawings(done, drawingRecord('two', week)), week)).toBe(true);
  });

  test('again, when it is drawn on after that', () => {
    const again = drawingRecord('one', week, {
      ...{ saved: [{ at: '11', paper: {} }], finished: '10' },
    });
    expect(isBeingDrawn(withDrawings(again), week)).toBe(true);
  });

  test('not for another plant, and not for another investigation', () => {
    const open = withDrawings(drawingRecord('one', week));
    expect(isBeingDrawn(open, weekOf('Shelf bean'))).toBe(false);
    expect(isBeingDrawn(open, weekOf('Yard gauge'))).toBe(false);
    expect(isBeingDrawn(open, weekOf('Shelf bean', 'Window bean'))).toBe(true);
  });

  test('of any log of the investigation, where a later program chose what is drawn', () => {
    const unknown = { ...drawingRecord('one', week), choice: { source: 'a-later-way' } };
    expect(isBeingDrawn(withDrawings(unknown), weekOf('Shelf bean'))).toBe(true);
    expect(isBeingDrawn(withDrawings(unknown), weekOf('Yard gauge'))).toBe(false);
  });

  test('never where nothing was drawn', () => {
    expect(sampleLog('Window bean').name).toBe('Window bean');
    expect(isBeingDrawn(withDrawings(), week)).toBe(false);
  });
});
