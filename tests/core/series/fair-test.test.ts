import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import { foldEntries, secondMeasures, type JournalEntry, type SpecimenId } from '#core/journal';
import {
  differenceChoices,
  fairTestOf,
  lightTrapNeeds,
  secondMeasuresDue,
  seriesOf,
} from '#core/series';
import { anId, bean, begun, heights, read, takenBack, took, written } from '../journal/entries';
import { marked } from './bean-log';
import { idOf, looked, planned, tookIn } from './care-log';

const notebookOf = (...entries: readonly JournalEntry[]) => foldEntries([...begun, ...entries]);
const testOf = (...entries: readonly JournalEntry[]) => fairTestOf(notebookOf(...entries), heights);
const monday = '2026-03-02';
const dryBean = anId<SpecimenId>(902);
const addedDry = written(5, {
  kind: 'specimen-added',
  ...{ specimen: dryBean, investigation: heights, name: 'Bean B', startedOn: civilDay(monday) },
});
const tookDry = (number: number, day: string) =>
  written(number, {
    kind: 'reading-taken',
    ...{ specimen: dryBean, day: civilDay(day), measured: read(2) },
  });

describe('a fair test', () => {
  it('is none until somebody plans one', () => {
    expect(testOf(took(10, monday, 2))).toBeNull();
  });

  it('keeps the last plan before the first reading, and reports later ones', () => {
    const test = testOf(
      planned(10, 'water'),
      planned(11, 'soil'),
      took(12, monday, 2),
      planned(13, 'light'),
    )!;
    expect(test.plan?.id).toBe(idOf(11));
    expect(test.laterPlans.map(({ different }) => different)).toEqual(['light']);
    expect(test.isLocked).toBe(true);
  });

  it('is locked by the first reading of any of its specimens', () => {
    const entries = [addedDry, planned(10, 'water')];
    expect(testOf(...entries)!.isLocked).toBe(false);
    expect(testOf(...entries, tookDry(11, monday))!.isLocked).toBe(true);
    expect(testOf(...entries, marked(11, monday, 'not-up-yet'))!.isLocked).toBe(false);
  });

  it('is locked by the first of several readings, of whichever specimen', () => {
    const plans = [planned(10, 'water'), planned(12, 'soil')];
    const lastA = testOf(addedDry, ...plans, tookDry(11, monday), took(13, monday, 2))!;
    expect([lastA.plan?.different, lastA.laterPlans.length]).toEqual(['water', 1]);
    const lastB = testOf(addedDry, ...plans, took(11, monday, 2), tookDry(13, monday))!;
    expect([lastB.plan?.different, lastB.laterPlans.length]).toEqual(['water', 1]);
  });

  it('is locked by when a reading was written, not by the day it was taken', () => {
    const test = testOf(planned(10, 'water'), took(11, '2026-02-20', 2), planned(12, 'soil'))!;
    expect(test.plan?.different).toBe('water');
  });

  it('opens again when the only reading is taken back', () => {
    const test = testOf(
      planned(10, 'water'),
      took(11, monday, 2),
      planned(12, 'soil'),
      takenBack(13, 11),
    )!;
    expect([test.isLocked, test.plan?.different, test.laterPlans]).toEqual([false, 'soil', []]);
  });

  it('has no standing plan when the first was written after the readings', () => {
    const test = testOf(took(10, monday, 2), planned(11, 'light'))!;
    expect([test.plan, test.laterPlans.length, test.lightTrap]).toEqual([null, 1, true]);
  });

  it('does not lock for a reading of another investigation', () => {
    const elsewhere = written(11, {
      kind: 'reading-taken',
      ...{ specimen: anId<SpecimenId>(999), day: civilDay(monday), measured: read(2) },
    });
    expect(testOf(planned(10, 'water'), elsewhere)!.isLocked).toBe(false);
  });

  it('lists second differences that were noticed, without those taken back', () => {
    const noticed = (number: number, what: string) =>
      written(number, {
        kind: 'difference-noticed',
        ...{ investigation: heights, day: civilDay(monday), what },
      });
    const test = testOf(
      planned(10, 'water'),
      noticed(11, 'one pot fell'),
      noticed(12, 'moved by the cat'),
      takenBack(13, 12),
    )!;
    expect(test.differences.map(({ what }) => what)).toEqual(['one pot fell']);
  });

  it('asks for every second measure where light differs and none was planned', () => {
    expect(differenceChoices).toContain('light');
    const light = testOf(planned(10, 'light'))!;
    expect([light.lightTrap, light.second]).toEqual([true, secondMeasures]);
    expect(testOf(planned(10, 'light', ['stands']))!.second).toEqual(['stands']);
    const water = testOf(planned(10, 'water'))!;
    expect([water.lightTrap, water.second]).toEqual([false, []]);
  });

  it('has no light trap left from a plan that was changed in time', () => {
    expect(testOf(planned(10, 'light'), planned(11, 'water'))!.lightTrap).toBe(false);
  });

  it('lets a later plan add something to look at', () => {
    const test = testOf(
      planned(10, 'water', ['stands']),
      took(11, monday, 2),
      planned(12, 'water', ['leaves']),
    )!;
    expect(test.second).toEqual(['leaves', 'stands']);
  });

  it('tells a dry seed that never came up as a state, not as a height of 0', () => {
    const entries = [addedDry, planned(10, 'water'), took(11, monday, 2)];
    const ended = written(12, {
      kind: 'specimen-ended',
      ...{ specimen: dryBean, day: civilDay('2026-03-20'), how: 'finished' as const },
    });
    expect(testOf(...entries)!.specimens).toEqual([
      { specimen: bean, state: 'up' },
      { specimen: dryBean, state: 'not-up-yet' },
    ]);
    expect(testOf(...entries, ended)!.specimens[1]).toEqual({
      specimen: dryBean,
      state: 'never-up',
    });
  });
});

describe('a second measure', () => {
  const dueOn = (today: string, ...entries: readonly JournalEntry[]) => {
    const notebook = notebookOf(...entries);
    const series = seriesOf(notebook, bean, civilDay(today))!;
    return secondMeasuresDue(notebook, series, civilDay(today));
  };
  const plan = planned(10, 'water', ['leaves', 'colour', 'stands']);

  it('is due from the first height on, and not before', () => {
    expect(dueOn(monday, plan, marked(11, monday, 'not-up-yet'))).toEqual([]);
    const due = dueOn(monday, plan, took(11, monday, 2));
    expect(due).toEqual(
      ['leaves', 'colour', 'stands'].map((measure) => ({
        ...{ measure, lastDay: null, daysWithout: [monday], isDue: true },
      })),
    );
  });

  it('of leaves comes from readings, of colour and standing from looks', () => {
    const due = dueOn(
      monday,
      plan,
      tookIn(11, monday, read(2), { leaves: 2 }),
      looked(12, monday, { colour: 'green' }),
    );
    expect(due.map(({ measure, isDue }) => [measure, isDue])).toEqual([
      ['leaves', false],
      ['colour', false],
      ['stands', true],
    ]);
  });

  it('is due again after a week, with the days measured since', () => {
    const entries = [
      planned(10, 'water', ['leaves']),
      tookIn(11, monday, read(2), { leaves: 2 }),
      took(12, '2026-03-04', 3),
      took(13, '2026-03-06', 4),
    ];
    expect(dueOn('2026-03-08', ...entries)).toEqual([
      {
        ...{ measure: 'leaves', lastDay: monday, isDue: false },
        daysWithout: ['2026-03-04', '2026-03-06'],
      },
    ]);
    expect(dueOn('2026-03-09', ...entries)[0]?.isDue).toBe(true);
  });

  it('is not looked for after the log has ended, or without a fair test', () => {
    const ended = written(12, {
      kind: 'specimen-ended',
      ...{ specimen: bean, day: civilDay(monday), how: 'finished' as const },
    });
    expect(dueOn(monday, plan, took(11, monday, 2), ended)).toEqual([]);
    expect(dueOn(monday, took(11, monday, 2))).toEqual([]);
  });

  it('that was taken back was not noted', () => {
    const due = dueOn(
      monday,
      planned(10, 'water', ['stands']),
      took(11, monday, 2),
      looked(12, monday, { stands: 'leans' }),
      takenBack(13, 12),
    );
    expect(due[0]?.isDue).toBe(true);
  });
});

describe('the light trap', () => {
  const needsOn = (today: string, ...entries: readonly JournalEntry[]) => {
    const notebook = notebookOf(...entries);
    const both = [...notebook.specimens.keys()].map((id) =>
      seriesOf(notebook, id, civilDay(today))!,
    );
    return lightTrapNeeds(notebook, both, civilDay(today));
  };
  const light = [addedDry, planned(10, 'light'), took(11, monday, 4), tookDry(12, monday)];
  const lookedAtBoth = [
    looked(20, monday, { colour: 'pale-green' }),
    written(21, {
      kind: 'looks-noted',
      ...{ specimen: dryBean, day: civilDay(monday), stands: 'by-itself' as const },
    }),
  ];

  it('wants a second measure and three weeks before anybody asks which did better', () => {
    expect(needsOn('2026-03-09', ...light)).toEqual(['second-measure', 'three-weeks']);
    expect(needsOn('2026-03-22', ...light, ...lookedAtBoth)).toEqual(['three-weeks']);
    expect(needsOn('2026-03-23', ...light, ...lookedAtBoth)).toEqual([]);
    expect(needsOn('2026-03-23', ...light, lookedAtBoth[0]!)).toEqual(['second-measure']);
  });

  it('wants both while nothing is up', () => {
    expect(needsOn(monday, planned(10, 'light'))).toEqual(['second-measure', 'three-weeks']);
  });

  it('keeps what was looked at when a log has ended', () => {
    const ended = written(30, {
      kind: 'specimen-ended',
      ...{ specimen: bean, day: civilDay('2026-03-20'), how: 'finished' as const },
    });
    expect(needsOn('2026-03-23', ...light, ...lookedAtBoth, ended)).toEqual([]);
  });

  it('wants nothing where something else differs', () => {
    expect(needsOn(monday, planned(10, 'water'), took(11, monday, 4))).toEqual([]);
  });
});
