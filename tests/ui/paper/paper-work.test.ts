import { emptyDrawing } from '#core/graphs';
import { civilDay } from '#core/calendar';
import type { DrawingId, PersonId } from '#core/journal';
import { describe, expect, test } from 'vitest';
import { paperRequest, type PaperRequest } from '../../../src/lib/ui/paper/paper-request';
import { paperWork } from '../../../src/lib/ui/paper/paper-work';
import { drawingRecord, sampleNotebook, weekOf, withDrawings } from './sample-paper';

const now = { today: civilDay('2026-05-01'), author: null };
const open = paperRequest(new URLSearchParams());
const week = weekOf('Window bean');
const asked: PaperRequest = {
  ...{ ...open, chosen: { choice: week, graph: 'bar-graph', stage: 'grade-2' } },
};
const person = (name: string): PersonId =>
  [...sampleNotebook.people.values()].find((each) => each.name === name)!.id;
const found = (...args: Parameters<typeof paperWork>) => {
  const work = paperWork(...args);
  if (!work?.ok) throw new Error(`No work: ${JSON.stringify(work)}`);
  return work.value;
};

describe('what is to go on paper', () => {
  test('is nothing of the notebook where the address names nothing', () => {
    expect(paperWork(sampleNotebook, open, now)).toBeNull();
  });

  test('is the table that was chosen, by the name of its plant, on the paper of its unit', () => {
    const work = found(sampleNotebook, asked, now);
    expect(work).toMatchObject({ name: 'Window bean', isMadeUp: true, own: null, size: 'a4' });
    expect(work.right).toMatchObject({ kind: 'bar-graph', stage: 'grade-2' });
    expect(work.isBeingDrawn).toBe(false);
  });

  test('is what the child drew, in the newest version that can be read', () => {
    const drawn = { ...emptyDrawing('bar-graph', { columns: 8, rows: 9 }), title: 'Our bean' };
    const notebook = withDrawings(
      drawingRecord('one', week, {
        saved: [
          { at: '09', paper: drawn },
          { at: '10', paper: { kind: 'a-later-graph' } },
        ],
      }),
    );
    const work = found(notebook, { ...open, drawing: 'one' as DrawingId }, now);
    expect(work.own?.title).toBe('Our bean');
    expect(work.isBeingDrawn).toBe(true);
    expect(work.right.table).toEqual(found(sampleNotebook, asked, now).right.table);
  });

  test('is the tally that the child made, where a drawing is drawn from one', () => {
    const skies = { ...week, source: 'weather-days', told: null } as const;
    const cards = ['sun', 'cloud'].map((says, index) => {
      const day = civilDay(`2026-03-1${index + 1}`);
      return { thing: day, day, says, picks: ['sun'] };
    });
    const tally = { kinds: ['sun', 'cloud'], cards, use: 'mine' };
    const saved = [{ at: '09', paper: { tally } }];
    const work = found(
      withDrawings(drawingRecord('one', skies, { saved })),
      { ...open, drawing: 'one' as DrawingId },
      now,
    );
    expect(work.right.table).toMatchObject({
      madeBy: 'sorting',
      rows: [
        { label: 'sun', count: 2 },
        { label: 'cloud', count: 0 },
      ],
    });
  });

  test('is kept back from a table that is chosen while a drawing of it is open', () => {
    expect(found(withDrawings(drawingRecord('one', week)), asked, now).isBeingDrawn).toBe(true);
  });

  test('has its numbers where the hand of the child who draws does not cover them', () => {
    // In the made-up family Wren is right-handed and Pip left-handed; Moss is a grown-up.
    expect(found(sampleNotebook, asked, now).isLeftHanded).toBe(false);
    expect(found(sampleNotebook, asked, { ...now, author: person('Pip') }).isLeftHanded).toBe(true);
    expect(found(sampleNotebook, asked, { ...now, author: person('Moss') }).isLeftHanded).toBe(
      false,
    );
    const byPip = withDrawings(drawingRecord('one', week, { author: person('Pip') }));
    const request = { ...open, drawing: 'one' as DrawingId };
    expect(found(byPip, request, { ...now, author: person('Wren') }).isLeftHanded).toBe(true);
  });

  test('says why there is none', () => {
    const gone = { ...open, drawing: 'gone' as DrawingId };
    expect(paperWork(sampleNotebook, gone, now)).toMatchObject({ error: { kind: 'no-table' } });
    const short = { ...week, to: civilDay('2026-03-11') } as typeof week;
    const few = { ...asked, chosen: { ...asked.chosen!, choice: short } };
    expect(paperWork(sampleNotebook, few, now)).toMatchObject({ error: { kind: 'too-few' } });
    const wrong = { ...asked, chosen: { ...asked.chosen!, graph: 'line-graph' as const } };
    expect(paperWork(sampleNotebook, wrong, now)).toMatchObject({
      error: { kind: 'wrong-table-for-kind' },
    });
  });
});
