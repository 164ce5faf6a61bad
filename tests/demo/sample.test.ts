import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBackup } from '#core/exchange';
import { civilDay } from '#core/calendar';
import { guessesGettingCloser, predictionsOf } from '#core/growth';
import { foldEntries } from '#core/journal';
import {
  answersSinceChange,
  daysReadByMany,
  doubtedReadings,
  estimatesBy,
  fairTestOf,
  openDoubts,
  rulerPairs,
  seriesOf,
  startAtOneSignal,
} from '#core/series';
import { sampleFiles } from '../../demo/sample-files';

const file = (path: string): string => readFileSync(path, 'utf8');
const backup = readBackup(file('demo/sample-notebook.json'));
if (!backup.ok) throw new Error(`The sample cannot be read: ${backup.error.kind}`);
const notebook = foldEntries(backup.value.entries);
const logs = [...notebook.logBySpecimen.values()];

describe('the made-up notebook', () => {
  it('is what its stories tell', () => {
    const made = sampleFiles();
    expect(file('demo/sample-notebook.json')).toBe(made.backup);
    expect(file('static/sample-notebook.json')).toBe(made.backup);
    expect(file('demo/sample-log.csv')).toBe(made.csv);
  });

  it('has three finished investigations, all marked as made up', () => {
    const investigations = [...notebook.investigations.values()];
    expect(investigations.map((each) => each.quantity)).toEqual(['plant-height', 'rain', 'shadow']);
    expect(investigations.every((each) => each.ended !== null)).toBe(true);
    expect(investigations.every((each) => each.origin === 'made-up')).toBe(true);
    expect(notebook.notUnderstoodCount).toBe(0);
  });

  it('shows every kind of day: not up, missed, a trace, dry, a total of two days', () => {
    const states = new Set(logs.flatMap((log) => log.dayMarks.map((mark) => mark.state)));
    expect([...states].sort()).toEqual(['missed', 'not-up-yet', 'trace']);
    const readings = logs.flatMap((log) => log.readings);
    expect(readings.some((reading) => reading.counted.exact === 0)).toBe(true);
    expect(readings.filter((reading) => reading.spanDays === 2)).toHaveLength(1);
  });

  it('has one corrected reading, the old one still there', () => {
    const corrected = logs.flatMap((log) => log.readings).filter((each) => each.crossedOut.length);
    expect(corrected.map((each) => [each.crossedOut[0]?.counted.text, each.counted.text])).toEqual([
      ['21', '12'],
    ]);
  });

  const today = civilDay('2026-05-01');
  const [windowBean, , gauge] = [...notebook.specimens.keys()].map((id) =>
    seriesOf(notebook, id, today)!,
  );

  it('has guesses that come closer, and both sides of the ruler from zero', () => {
    const [wren] = notebook.people.keys();
    const closer = guessesGettingCloser(estimatesBy(notebook, wren!));
    expect(closer).toMatchObject({ ok: true, value: { answered: 12, forChild: 'closer' } });
    const pairs = rulerPairs(notebook, windowBean!);
    expect(pairs.map(({ agrees }) => agrees)).toEqual([true, true, true, true, true]);
    expect(startAtOneSignal(pairs).kind).toBe('fine');
  });

  it('has a fair test with looks and one more difference, and a day measured by three', () => {
    const test = fairTestOf(notebook, windowBean!.investigation.id);
    expect(test).toMatchObject({ plan: { different: 'light' }, isLocked: true, lightTrap: true });
    expect(test?.differences).toHaveLength(1);
    const [many] = daysReadByMany(windowBean!);
    expect(many).toMatchObject({ day: '2026-03-30', middle: { text: '22' } });
    expect(many?.readings).toHaveLength(3);
  });

  it('has one doubt that was answered, one that is open, and a sealed guess that has opened', () => {
    const doubted = doubtedReadings(gauge!, []);
    const answers = doubted.map(({ reading }) => answersSinceChange(notebook, reading).length);
    expect(answers).toEqual([1, 0]);
    expect(openDoubts(notebook, gauge!, []).map(({ reading }) => reading.day)).toEqual([
      '2026-04-24',
    ]);
    expect(predictionsOf(notebook, windowBean!, today)).toMatchObject([
      { state: 'open', measured: { text: '22' }, reading: { text: '21' } },
    ]);
  });
});
