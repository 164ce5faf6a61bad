import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import { tableOf } from '#core/graphs';
import {
  foldEntries,
  type DrawingId,
  type EntryId,
  type JournalEntry,
  type PersonId,
} from '#core/journal';
import { seriesOf, spreadOfDay } from '#core/series';
import { measuredAgain } from '../../../src/lib/ui/together/measured-again';
import { openPlotOf } from '../../../src/lib/ui/together/open-plot';
import { begunPlot, plotToDraw } from '../../../src/lib/ui/together/plot-to-draw';
import { spreadPlot } from '../../../src/lib/ui/together/spread-plot';
import { anId, bean, begun, read, took, written } from '../../core/journal/entries';

const day = civilDay('2026-03-10');
const [brother, mother] = [anId<PersonId>(702), anId<PersonId>(703)];
const sheet = anId<DrawingId>(50);
const three = [
  took(10, day, 12),
  took(11, day, 14, { author: brother }),
  took(12, day, 13, { author: mother }),
];

const cm = (...numbers: readonly number[]) => numbers.map((number) => read(number).exact);
const inches = (...numbers: readonly number[]) => numbers.map((each) => read(each, 'in').exact);

describe('the notebook’s plot of a day', () => {
  it('has every place from one below the smallest to one above the largest', () => {
    const { ticks, steps, crosses, highest } = spreadPlot(cm(12, 15, 12), 'cm', '1 cm');
    expect(ticks.map(({ label }) => label)).toEqual(['11', '12', '13', '14', '15', '16']);
    expect([steps, highest]).toEqual([5, 2]);
    expect(crosses).toEqual([
      { at: 1, up: 1 },
      { at: 1, up: 2 },
      { at: 4, up: 1 },
    ]);
  });

  it('begins at 0 and not below', () => {
    expect(spreadPlot(cm(0, 1), 'cm', '1 cm').ticks.map(({ label }) => label)).toEqual([
      '0',
      '1',
      '2',
    ]);
  });

  it('has a place for every half inch', () => {
    const { steps, crosses } = spreadPlot(inches(4.5, 5), 'in', '1/2 in');
    expect([steps, crosses.map(({ at }) => at)]).toEqual([3, [1, 2]]);
  });

  it('of numbers far apart, has fewer places, and every cross on the sheet', () => {
    const { steps, crosses } = spreadPlot(cm(10, 110), 'cm', '1 cm');
    expect(steps).toBeLessThanOrEqual(43);
    for (const { at } of crosses) expect(at >= 0 && at <= steps).toBe(true);
  });
});

describe('the plot a child draws of it', () => {
  const drawn = (...entries: readonly JournalEntry[]) => {
    const notebook = foldEntries([...begun, ...entries]);
    const series = seriesOf(notebook, bean, day)!;
    return { notebook, choice: plotToDraw(notebook, series, day, 'grade-2') };
  };

  it('is of every number of that day', () => {
    const { notebook, choice } = drawn(took(9, '2026-03-09', 11), ...three);
    expect(choice).toMatchObject({ source: 'reads-of-one', from: day, to: day });
    expect(JSON.stringify(tableOf(choice!, notebook, day))).toContain('14');
  });

  it('is not offered when one read, or none', () => {
    expect(drawn(three[0]!).choice).toBeNull();
    expect(drawn().choice).toBeNull();
  });

  const begunOn = (choice: NonNullable<ReturnType<typeof drawn>['choice']>, number = 60) =>
    written(number, begunPlot(sheet, choice, 'grade-2'));

  it('is open from its beginning till it is done, for its own day and specimen alone', () => {
    const { choice } = drawn(...three);
    const at = (...more: readonly JournalEntry[]) =>
      foldEntries([...begun, ...three, begunOn(choice!), ...more]);
    const finished = written(61, { kind: 'drawing-finished', drawing: sheet });
    expect(openPlotOf(at(), bean, day)?.id).toBe(sheet);
    expect(openPlotOf(at(), bean, civilDay('2026-03-09'))).toBeNull();
    expect(openPlotOf(at(), anId(902), day)).toBeNull();
    expect(openPlotOf(at(finished), bean, day)).toBeNull();
  });

  it('drawn on after it was done, is open again', () => {
    const { choice } = drawn(...three);
    const entries = [
      written(61, { kind: 'drawing-finished', drawing: sheet }),
      written(62, { kind: 'drawing-saved', drawing: sheet, paper: {}, ticked: [] }),
    ];
    const notebook = foldEntries([...begun, ...three, begunOn(choice!), ...entries]);
    expect(openPlotOf(notebook, bean, day)?.id).toBe(sheet);
  });

  it('is no other kind of graph', () => {
    const { choice } = drawn(...three);
    const bars = { ...begunPlot(sheet, choice!, 'grade-2'), graph: 'bar-graph' } as never;
    const notebook = foldEntries([...begun, ...three, written(60, bars)]);
    expect(openPlotOf(notebook, bean, day)).toBeNull();
  });

  it('whose table cannot be read, is held to be of any of its specimen’s days', () => {
    const { choice } = drawn(...three);
    const later = { ...begunPlot(sheet, choice!, 'grade-2'), choice: { source: 'later' } } as never;
    const notebook = foldEntries([...begun, ...three, written(60, later)]);
    expect(openPlotOf(notebook, bean, civilDay('2026-03-04'))?.id).toBe(sheet);
    expect(openPlotOf(notebook, anId(902), day)).toBeNull();
  });
});

describe('whether somebody measured again', () => {
  const again = (...entries: readonly JournalEntry[]) => {
    const series = seriesOf(foldEntries([...begun, ...three, ...entries]), bean, day)!;
    return measuredAgain(series, spreadOfDay(series, day)!);
  };

  it('is not so when each has one number', () => {
    expect(again()).toBe(false);
    expect(again(took(20, day, 13, { author: null }))).toBe(false);
  });

  it('is so when a person has two', () => {
    expect(again(took(20, day, 13, { author: brother }))).toBe(true);
  });

  it('is not so when a number was corrected: what is crossed out is not drawn', () => {
    const correction = written(21, {
      kind: 'reading-corrected',
      reading: anId<EntryId>(10),
      to: { day, measured: read(13) },
      why: 'looked again',
    });
    expect(again(correction)).toBe(false);
  });
});
