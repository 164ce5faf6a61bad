import { describe, expect, it } from 'vitest';
import { addDays, civilDay } from '#core/calendar';
import { tallyToSort, withPick, type ChildTally, type GraphKind } from '#core/graphs';
import { stampOf, type DrawingId, type DrawingRecord, type Notebook } from '#core/journal';
import { begunCards } from '../../../src/lib/ui/draw/begun-card';
import { openedDrawing } from '../../../src/lib/ui/draw/opened-drawing';
import { anId, child } from '../../core/journal/entries';
import { notebookOf, specimenId, thing } from '../../core/graphs/small-notebook';

const today = civilDay('2026-04-30');
const at = stampOf(Date.UTC(2026, 3, 30, 8));

/** So many days of sun, and then two of cloud. */
const skies = (sunny: number): Notebook =>
  notebookOf({
    Bean: Array.from({ length: sunny + 2 }, (_, index) => ({
      ...{ day: addDays(civilDay('2026-03-02'), index), read: String(index + 1) },
      weather: index < sunny ? ('sun' as const) : ('cloud' as const),
    })),
  });

const recordOf = (
  papers: readonly Record<string, unknown>[],
  graph: GraphKind | 'hologram' = 'bar-graph',
): DrawingRecord => ({
  ...{ id: anId<DrawingId>(990), investigation: thing, graph, stage: 'grade-2' },
  ...{ level: 'frame-given', author: child, begunAt: at, finishedAt: null },
  choice: {
    ...{ source: 'weather-days', investigation: thing, specimens: [specimenId(0)] },
    ...{ from: '2026-03-02', to: '2026-04-20', told: null, mostKinds: null },
  },
  versions: papers.map((paper) => ({ at, paper, ticked: [] })),
});

const sorted = (notebook: Notebook, kindOf: (index: number) => string): ChildTally => {
  const opened = openedDrawing(
    recordOf([{ tally: tallyToSort([], ['sun'], null) }]),
    notebook,
    today,
  );
  if (!opened.ok || opened.value.at !== 'sorting') throw new Error('nothing to sort');
  return opened.value.sorting.cards.reduce(
    (tally, _, index) => withPick(tally, index, kindOf(index)),
    opened.value.sorting.tally,
  );
};

describe('a drawing taken up again', () => {
  it('goes back to sorting while that is not finished, and to the desk when it is', () => {
    const notebook = skies(8);
    const tally = sorted(notebook, () => 'cloud');
    const open = (use: ChildTally['use']) =>
      openedDrawing(recordOf([{ tally: { ...tally, use } }]), notebook, today);
    expect(open('sorting')).toMatchObject({ value: { at: 'sorting', source: 'weather-days' } });
    expect(open('mine')).toMatchObject({
      value: {
        ...{ at: 'desk', notice: null },
        desk: { table: { rows: [{ count: 0 }, { label: 'cloud', count: 10 }] } },
      },
    });
    expect(open('log')).toMatchObject({ value: { desk: { table: { rows: [{ count: 8 }, {}] } } } });
  });

  it('has the log’s table, and says so, where the tally has no room on the paper', () => {
    // The paper has 16 squares up, and a child of grade 2 counts by ones: 16 fit, 17 do not.
    const notebook = skies(15);
    const open = (tally: ChildTally) =>
      openedDrawing(recordOf([{ tally: { ...tally, use: 'mine' } }]), notebook, today);
    expect(open(sorted(notebook, () => 'sun'))).toMatchObject({
      value: { notice: 'does-not-fit', desk: { table: { rows: [{ count: 15 }, { count: 2 }] } } },
    });
    expect(open(sorted(notebook, (index) => (index < 16 ? 'sun' : 'cloud')))).toMatchObject({
      value: { notice: null, desk: { table: { rows: [{ count: 16 }, { count: 1 }] } } },
    });
  });

  it('is not opened where it was drawn with a later program', () => {
    const notebook = skies(8);
    const opened = openedDrawing(recordOf([{ kind: 'hologram' }]), notebook, today);
    expect(opened).toEqual({ ok: false, error: { kind: 'not-understood' } });
  });
});

describe('the card of a drawing', () => {
  it('says how far it is, and which days were sorted otherwise', () => {
    const notebook = skies(8);
    const tally = sorted(notebook, (index) => (index < 9 ? 'sun' : 'cloud'));
    const card = (paper: Record<string, unknown>) =>
      begunCards([recordOf([paper])], notebook, today)[0];
    expect(card({ tally })).toMatchObject({
      ...{ title: 'Bar graph: The weather', stands: 'sort on', otherwise: [] },
    });
    expect(card({ tally: { ...tally, use: 'mine' } })).toMatchObject({
      stands: 'go on',
      otherwise: [{ label: 'Tue 10 Mar', says: 'cloud', sorted: 'sun', inLog: 'cloud' }],
    });
    expect(begunCards([recordOf([], 'hologram')], notebook, today)).toEqual([]);
  });
});
