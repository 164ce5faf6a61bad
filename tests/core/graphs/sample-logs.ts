import { civilDay } from '#core/calendar';
import { readBackup } from '#core/exchange';
import { tableOf, type GraphKind, type TableChoice } from '#core/graphs';
import { foldEntries, type Notebook, type Stage } from '#core/journal';
import sample from '../../../demo/sample-notebook.json?raw';
import type { GoldenLog } from './golden-logs';

const backup = readBackup(sample);
if (!backup.ok) throw new Error(`The sample cannot be read: ${backup.error.kind}`);

/** The made-up notebook that the program comes with, looked at on 1 May 2026. */
export const sampleNotebook: Notebook = foldEntries(backup.value.entries);
export const sampleToday = civilDay('2026-05-01');

/** A choice out of the made-up notebook, its specimens by name. */
export const sampleChoice = (
  source: TableChoice['source'],
  names: readonly string[],
  [from, to]: readonly [string, string],
  told: TableChoice['told'] = null,
  mostKinds: number | null = null,
): TableChoice => {
  const specimens = names.map((name) => {
    const found = [...sampleNotebook.specimens.values()].find((each) => each.name === name);
    if (!found) throw new Error(`The sample has no ${name}`);
    return found;
  });
  return {
    ...{ source, from: civilDay(from), to: civilDay(to), told, mostKinds },
    investigation: specimens[0]!.investigation,
    specimens: specimens.map(({ id }) => id),
  };
};

export const inCm = { unit: 'cm', mark: '1 cm', converts: false } as const;
export const inMm = { unit: 'mm', mark: '1 mm', converts: false } as const;
const march = ['2026-03-02', '2026-03-30'] as const;
const april = ['2026-04-01', '2026-04-30'] as const;
const beans = ['Window bean', 'Shelf bean'];

const logOf = (name: string, graph: GraphKind, stage: Stage, choice: TableChoice): GoldenLog => {
  const table = tableOf(choice, sampleNotebook, sampleToday);
  if (!table) throw new Error(`${name} has no table`);
  return { name, graph, stage, table };
};

/** Tables of the made-up notebook, each with the graph and the stage it is drawn for. */
export const sampleLogs: readonly GoldenLog[] = [
  logOf(
    ...(['weather of the bean weeks', 'picture-graph', 'grade-2'] as const),
    sampleChoice('weather-days', beans, march),
  ),
  logOf(
    ...(['wet and dry days of April', 'bar-graph', 'grade-3'] as const),
    sampleChoice('wet-days', ['Yard gauge'], april),
  ),
  logOf(
    ...(['the window bean from 11 to 21 March', 'bar-graph', 'grade-2'] as const),
    sampleChoice('day-values', ['Window bean'], ['2026-03-11', '2026-03-21'], inCm),
  ),
  logOf(
    ...(['rain of April week by week', 'bar-graph', 'grade-3'] as const),
    sampleChoice('week-values', ['Yard gauge'], april, inMm),
  ),
  logOf(
    ...(['rain amounts of April', 'line-plot', 'grade-2'] as const),
    sampleChoice('rain-amounts', ['Yard gauge'], april, inMm),
  ),
  logOf(
    ...(['growth of both beans', 'line-plot', 'grade-3'] as const),
    sampleChoice('growth-amounts', beans, march, inCm),
  ),
  logOf(
    ...(['both beans over the days', 'line-graph', 'grade-3'] as const),
    sampleChoice('days-in-order', beans, ['2026-03-11', '2026-03-30'], inCm),
  ),
  logOf(
    ...(['the shadow of the stick', 'line-graph', 'grade-2'] as const),
    sampleChoice('hours-in-order', ['Yard stick'], ['2026-04-24', '2026-04-24'], inCm),
  ),
];
