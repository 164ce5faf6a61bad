import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBackup } from '#core/exchange';
import { foldEntries } from '#core/journal';
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
});
