import { civilDay } from '#core/calendar';
import { emptyDrawing } from '#core/graphs';
import { offZeroTaskOf, reviewSheet } from '#core/lessons';
import type {
  DrawingId,
  EntryDraft,
  EntryId,
  EvidenceLevel,
  JournalEntry,
  PersonId,
} from '#core/journal';
import type { AskedQuestion, Told } from '#core/questions';
import { anId, begun, heights, written } from '../journal/entries';

/** Small journals that evidence is read from. */
export const sister = anId<PersonId>(702);
export const drawing = (number: number) => anId<DrawingId>(500 + number);

export const aSister = written(9, {
  ...{ kind: 'person-added', person: sister, name: 'Pip', shape: 'snail', colour: 3 },
  ...{ role: 'child', stage: 'grade-1', hand: 'left' },
});
export const oneChild: readonly JournalEntry[] = begun;
export const twoChildren: readonly JournalEntry[] = [...begun, aSister];

const aWord = (word: string): Told => ({ kind: 'word', word });
const days = (count: number): Told => ({ kind: 'count', count, of: 'days' });
const length: Told = { kind: 'length', exact: 30_000_000, unit: 'cm', mark: '1 cm' };
const day: Told = { kind: 'day', day: civilDay('2026-03-02') };
const ofPlant = { plant: aWord('Bean A'), measured: aWord('height') };

const parts = {
  R1: { level: 'read', blanks: { ...ofPlant, day }, answer: length },
  R2: { level: 'read', blanks: { kind: aWord('sun'), counted: aWord('days') }, answer: days(3) },
  R3: { level: 'read', blanks: { ...ofPlant, value: length }, answer: day },
  C2: {
    level: 'between',
    ...{ blanks: { ...ofPlant, more: day, less: day, gap: days(2) }, answer: length },
  },
  C14: {
    level: 'between',
    ...{ blanks: { kind: aWord('sun'), counted: aWord('days'), each: days(2) }, answer: days(5) },
  },
} as const satisfies Readonly<Record<string, Pick<AskedQuestion, 'level' | 'blanks' | 'answer'>>>;

/** A question as it was kept; what stands in it does not matter here. */
export const asked = (template: keyof typeof parts): AskedQuestion => ({
  ...{ template, range: 'G1', slips: [], wholeSet: false, ...parts[template] },
});

export const answered = (
  template: keyof typeof parts | 'broken',
  day: string,
  how: EvidenceLevel,
): EntryDraft => ({
  ...{ kind: 'question-answered', day: civilDay(day), answer: '3 days', how },
  question: template === 'broken' ? { template: 'Z9' } : { ...asked(template) },
});

const ruler = offZeroTaskOf({ unit: 'cm', mark: '1 cm', begins: 20_000_000, ends: 50_000_000 });
if (!ruler.ok) throw new Error('A thing from 2 cm to 5 cm lies on a ruler');

/** Items of the daily review as they are kept. */
export const rulerItem = reviewSheet({
  ...{ kind: 'ruler', name: 'ruler-1', task: { of: 'ruler', ruler: ruler.value } },
});
export const sumItem = reviewSheet({
  ...{ kind: 'sum', name: 'sum-1' },
  task: {
    of: 'sum',
    sum: {
      ...{ story: 'grew', thing: 'height', of: 'Bean A', specimen: null, unit: 'cm' },
      ...{ first: day, second: day, start: 5, change: 3, result: 8, unknown: 'result' },
      isPractice: false,
    },
  },
});
export const questionItem = reviewSheet({
  ...{ kind: 'graph-read', name: 'question-1' },
  task: {
    ...{ of: 'question', question: asked('R2'), choices: null },
    about: { kind: 'practice', seed: 1, stage: 'grade-2' },
  },
});

export const reviewed = (
  item: Readonly<Record<string, unknown>>,
  day: string,
  outcome: 'rest' | 'again',
): EntryDraft => ({
  ...{ kind: 'review-answered', item, day: civilDay(day), answer: '8', outcome },
});

export const noted = (
  skill: string,
  day: string,
  how: EvidenceLevel,
  more: { drawing?: DrawingId; answer?: EntryId; note?: string; person?: PersonId } = {},
): EntryDraft => ({
  ...{ kind: 'evidence-noted', person: anId<PersonId>(701), skill, day: civilDay(day), how },
  ...more,
});

/** A drawing begun, saved and done, as the entries `number` to `number` + 2. */
export const drawn = (
  number: number,
  graph: string,
  where: { author?: PersonId | null; tally?: object } = {},
): readonly JournalEntry[] => {
  const { author = anId<PersonId>(701), tally } = where;
  const id = drawing(number);
  const paper = {
    ...emptyDrawing('bar-graph', { columns: 4, rows: 6 }),
    ...(tally ? { tally } : {}),
  };
  return [
    written(
      number,
      {
        ...{ kind: 'drawing-begun', drawing: id, investigation: heights, graph, choice: {} },
        ...{ stage: 'grade-2', level: 'frame-given' },
      },
      { author },
    ),
    written(number + 1, { kind: 'drawing-saved', drawing: id, paper, ticked: [] }, { author }),
    written(number + 2, { kind: 'drawing-finished', drawing: id }, { author }),
  ];
};
