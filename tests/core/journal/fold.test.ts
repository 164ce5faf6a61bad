import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import {
  foldEntries,
  type DrawingId,
  type EntryId,
  type JournalEntry,
  type LessonId,
  type Notebook,
} from '#core/journal';
import {
  anId,
  bean,
  begun,
  child,
  heights,
  phone,
  read,
  takenBack,
  took,
  written,
} from './entries';

const readingsIn = (notebook: Notebook) => notebook.logBySpecimen.get(bean)?.readings ?? [];

const day = civilDay('2026-03-12');
const everyCare: readonly JournalEntry[] = [
  written(31, { kind: 'estimate-made', specimen: bean, day, measured: read(3), helper: 'thumb' }),
  written(32, {
    kind: 'helper-length-measured',
    person: child,
    helper: 'thumb',
    measured: read(2),
  }),
  written(33, {
    kind: 'helper-length-measured',
    person: child,
    helper: 'thumb',
    measured: read(3),
  }),
  written(34, {
    kind: 'other-side-read',
    reading: anId<EntryId>(6),
    measured: read(2, 'in', '1 in'),
  }),
  written(35, {
    kind: 'other-side-read',
    reading: anId<EntryId>(6),
    measured: read(1, 'in', '1 in'),
  }),
  written(36, {
    kind: 'doubt-answered',
    reading: anId<EntryId>(6),
    doubt: 'big-jump',
    answer: 'read-so',
  }),
  written(37, {
    kind: 'prediction-sealed',
    specimen: bean,
    day,
    forDay: civilDay('2026-03-14'),
    measured: read(6),
    because: 'It likes the sun.',
  }),
  written(38, {
    kind: 'fair-test-planned',
    investigation: heights,
    different: 'light',
    same: ['soil', 'water'],
    second: ['leaves', 'colour'],
  }),
  written(39, {
    kind: 'difference-noticed',
    investigation: heights,
    day,
    what: 'One got a drink.',
  }),
  written(40, { kind: 'looks-noted', specimen: bean, day, colour: 'green', stands: 'by-itself' }),
  written(41, { kind: 'ruler-checked', day, zeroAtEdge: false }),
  written(42, { kind: 'caution-put-away', caution: 'soil', day }),
  written(43, { kind: 'caution-put-away', caution: 'soil', day: civilDay('2026-03-05') }),
];

const lesson = anId<LessonId>(501);
const everyTeaching: readonly JournalEntry[] = [
  written(71, {
    kind: 'lesson-made',
    ...{
      lesson,
      investigation: heights,
      specimen: bean,
      graph: 'line-plot',
      choice: { of: 'all' },
    },
    ...{ purpose: 'read-a-line-plot', minutes: 20, stage: 'grade-2', seed: 7 },
  }),
  written(72, { kind: 'lesson-changed', lesson, to: { opener: 'Hold the ruler.' } }),
  written(73, { kind: 'lesson-given', lesson, day }),
  written(74, {
    kind: 'question-answered',
    ...{ lesson, question: { template: 'R1' }, day, answer: '5 cm', how: 'alone' },
  }),
  written(75, { kind: 'question-written', lesson, level: 'read', day, text: 'How tall was it?' }),
  written(76, {
    kind: 'review-answered',
    ...{ item: { name: 'ruler' }, day, answer: '3', outcome: 'rest' },
  }),
  written(77, { kind: 'evidence-noted', person: child, skill: 'reads-a-bar', how: 'seen', day }),
];

const everyKind: readonly JournalEntry[] = [
  ...begun,
  took(5, '2026-03-10', 1),
  took(6, '2026-03-11', 3),
  written(7, {
    kind: 'reading-corrected',
    reading: anId<EntryId>(6),
    to: { day: civilDay('2026-03-11'), measured: read(2) },
    why: 'we read the wrong end',
  }),
  written(8, { kind: 'day-marked', specimen: bean, day: civilDay('2026-03-12'), state: 'missed' }),
  takenBack(9, 8),
  written(10, { kind: 'person-changed', person: child, to: { name: 'Robin' } }),
  written(11, { kind: 'note-written', specimen: bean, day: civilDay('2026-03-12'), text: 'leaf' }),
  written(12, { kind: 'kind-noted', specimen: bean, day: civilDay('2026-03-12'), word: 'sun' }),
  written(13, { kind: 'investigation-changed', investigation: heights, to: { unit: 'in' } }),
  written(14, { kind: 'investigation-removed', investigation: heights }),
  takenBack(15, 14),
  written(16, {
    kind: 'reading-corrected',
    reading: anId<EntryId>(6),
    to: { day: civilDay('2026-03-11'), measured: read(4) },
  }),
  written(17, {
    kind: 'specimen-ended',
    specimen: bean,
    day: civilDay('2026-03-30'),
    how: 'finished',
  }),
  written(18, {
    kind: 'investigation-ended',
    investigation: heights,
    day: civilDay('2026-03-30'),
    found: 'It grew.',
  }),
  ...everyCare,
  ...everyTeaching,
  { ...took(90, '2026-03-13', 5), kind: 'moon-seen', phase: 'half' } as unknown as JournalEntry,
];

describe('fold', () => {
  it('F1 gives the same notebook for any order and any repeats', () => {
    const expected = foldEntries(everyKind);
    fc.assert(
      fc.property(
        fc.shuffledSubarray([...everyKind], { minLength: everyKind.length }),
        fc.subarray([...everyKind]),
        (shuffled, repeats) => {
          expect(foldEntries([...shuffled, ...repeats])).toEqual(expected);
        },
      ),
      { seed: 20260302, numRuns: 300 },
    );
  });

  it('F1 never changes the entries it is given', () => {
    const frozen = everyKind.map((entry) => Object.freeze({ ...entry }));
    expect(() => foldEntries(Object.freeze(frozen))).not.toThrow();
  });

  it('F1 orders entries of one minute alike on two devices', () => {
    const here = took(5, '2026-03-10', 1, { minute: 9 });
    const there = took(6, '2026-03-10', 2, { minute: 9, device: phone });
    const seen = [here, there].map((each) => each.id);
    for (const entries of [
      [here, there],
      [there, here],
    ]) {
      expect(readingsIn(foldEntries(entries)).map((each) => each.id)).toEqual(seen);
    }
  });

  it('F2 counts an entry of a later program and lets it change nothing else', () => {
    const known = foldEntries(everyKind.slice(0, -1));
    const all = foldEntries(everyKind);
    expect(all.notUnderstoodCount).toBe(1);
    expect({ ...all, notUnderstoodCount: 0 }).toEqual({
      ...known,
      entryCount: known.entryCount + 1,
      lastStamp: everyKind.at(-1)!.at,
    });
  });

  it('F3 keeps a late entry on the day it was taken', () => {
    const notebook = foldEntries([...begun, took(6, '2026-03-12', 3), took(7, '2026-03-11', 2)]);
    expect(readingsIn(notebook).map((reading) => reading.day)).toEqual([
      '2026-03-12',
      '2026-03-11',
    ]);
  });

  it('F4 keeps a reading that was taken back as a crossed-out line', () => {
    const [reading] = readingsIn(
      foldEntries([...begun, took(5, '2026-03-10', 1), takenBack(6, 5)]),
    );
    expect(reading?.takenBack?.by).toBe(anId(6));
    expect(reading?.counted.text).toBe('1');
  });

  it('F4 lets a taking back be taken back, as often as one likes', () => {
    const back = [takenBack(6, 5), takenBack(7, 6), takenBack(8, 7)];
    const states = [0, 1, 2, 3].map((count) => {
      const entries = [...begun, took(5, '2026-03-10', 1), ...back.slice(0, count)];
      return readingsIn(foldEntries(entries))[0]?.takenBack === null;
    });
    expect(states).toEqual([true, false, true, false]);
  });

  it('F4 removes the effect of a change that was taken back', () => {
    const renamed = written(10, { kind: 'person-changed', person: child, to: { name: 'Robin' } });
    expect(foldEntries([...begun, renamed]).people.get(child)?.name).toBe('Robin');
    const undone = foldEntries([...begun, renamed, takenBack(11, 10)]);
    expect(undone.people.get(child)?.name).toBe('Wren');
  });

  it('F5 keeps what was read before each correction, with why', () => {
    const reading = readingsIn(foldEntries(everyKind)).find((each) => each.id === anId(6));
    expect(reading?.counted.text).toBe('4');
    expect(reading?.crossedOut.map((each) => [each.counted.text, each.why])).toEqual([
      ['3', 'we read the wrong end'],
      ['2', undefined],
    ]);
  });

  it('F5 leaves the reading as it was when its correction is taken back', () => {
    const reading = readingsIn(foldEntries([...everyKind, takenBack(20, 16)])).find(
      (each) => each.id === anId(6),
    );
    expect(reading?.counted.text).toBe('2');
    expect(reading?.crossedOut).toHaveLength(1);
  });

  it.each([
    { values: [7], middle: 7 },
    { values: [9, 7], middle: 7 },
    { values: [9, 7, 8], middle: 8 },
    { values: [4, 9, 7, 8], middle: 7 },
    { values: [5, 5, 9], middle: 5 },
  ])('F6 counts the middle one of $values', ({ values, middle }) => {
    const [first, ...again] = values.map((value) => read(value));
    const entry = written(5, {
      kind: 'reading-taken',
      specimen: bean,
      day: civilDay('2026-03-10'),
      measured: first!,
      again,
    });
    const [reading] = readingsIn(foldEntries([...begun, entry]));
    expect(reading?.counted.text).toBe(String(middle));
    expect(reading?.all).toHaveLength(values.length);
  });

  it('F7 keeps two readings of one day', () => {
    const notebook = foldEntries([...begun, took(5, '2026-03-10', 1), took(6, '2026-03-10', 2)]);
    expect(readingsIn(notebook).map((reading) => reading.counted.text)).toEqual(['1', '2']);
  });

  it('F8 waits for what a correction corrects', () => {
    const correction = everyKind.filter((entry) => entry.id === anId(7));
    expect(readingsIn(foldEntries([...begun, ...correction]))).toEqual([]);
    const arrived = foldEntries([...begun, ...correction, took(6, '2026-03-11', 3)]);
    expect(readingsIn(arrived)[0]?.counted.text).toBe('2');
  });

  it('F9 lists a removed investigation and leaves its log alone', () => {
    const removed = foldEntries(everyKind.filter((entry) => entry.id !== anId(15)));
    expect(removed.investigations.size).toBe(0);
    expect(removed.removed.map((each) => each.investigation.title)).toEqual(['Our beans']);
    const again = written(20, { kind: 'investigation-removed', investigation: heights });
    const twice = foldEntries([...everyKind.filter((entry) => entry.id !== anId(15)), again]);
    expect(twice.removed[0]?.removals).toEqual([anId(14), anId(20)]);
    expect(readingsIn(removed)).toHaveLength(2);
    expect(foldEntries(everyKind).investigations.get(heights)?.title).toBe('Our beans');
  });

  it('F11 keeps every version of a drawing, and opens it again when finishing is taken back', () => {
    const drawing = anId<DrawingId>(501);
    const entries = [
      ...begun,
      written(5, {
        ...{ kind: 'drawing-begun', drawing, investigation: heights, graph: 'bar-graph' },
        ...{ choice: { by: 'weather' }, stage: 'grade-2', level: 'frame-given' },
      }),
      written(6, { kind: 'drawing-saved', drawing, paper: { title: '' }, ticked: [] }),
      written(7, { kind: 'drawing-saved', drawing, paper: { title: 'Our days' }, ticked: [0] }),
      written(8, { kind: 'drawing-finished', drawing }),
    ];
    const folded = foldEntries(entries).drawings.get(drawing);
    expect(folded?.versions.map((version) => version.paper)).toEqual([
      { title: '' },
      { title: 'Our days' },
    ]);
    expect(folded?.finishedAt).toBe(entries.at(-1)!.at);
    expect(foldEntries([...entries, takenBack(9, 8)]).drawings.get(drawing)?.finishedAt).toBeNull();
  });

  it('F10 changes only the fields a change names', () => {
    const investigation = foldEntries(everyKind).investigations.get(heights);
    expect(investigation).toMatchObject({ unit: 'in', mark: '1 cm', title: 'Our beans' });
  });
});

describe('careful measuring adds up', () => {
  it('F12 of helper lengths and the other side of the ruler the last one stands', () => {
    const { helperLengths, otherSides } = foldEntries([...begun, ...everyCare]);
    expect(helperLengths.get(child)?.get('thumb')).toEqual(read(3));
    expect(otherSides.get(anId<EntryId>(6))?.measured).toEqual(read(1, 'in', '1 in'));
    const without = foldEntries([...begun, ...everyCare, takenBack(50, 35)]);
    expect(without.otherSides.get(anId<EntryId>(6))?.measured).toEqual(read(2, 'in', '1 in'));
  });

  it('F12 what somebody said stays as a crossed-out line when it is taken back', () => {
    const { estimates, predictions, looks, differences } = foldEntries([
      ...begun,
      ...everyCare,
      ...[31, 37, 40, 39].map((entry, index) => takenBack(60 + index, entry)),
    ]);
    for (const lines of [
      estimates.get(bean),
      predictions.get(bean),
      looks.get(bean),
      differences,
    ]) {
      expect(lines).toHaveLength(1);
      expect(lines?.[0]?.takenBack).not.toBeNull();
    }
  });

  it('F12 answers to doubts and plans of a fair test are kept in order', () => {
    const again = written(51, {
      kind: 'doubt-answered',
      reading: anId<EntryId>(6),
      doubt: 'shrank',
      answer: 'look-again',
    });
    const notebook = foldEntries([again, ...begun, ...everyCare]);
    expect(notebook.doubtAnswers.get(anId<EntryId>(6))?.map((each) => each.doubt)).toEqual([
      'big-jump',
      'shrank',
    ]);
    expect(notebook.fairTests.get(heights)?.map((each) => each.different)).toEqual(['light']);
  });

  it('F12 a caution is put away from the last day it was put away on', () => {
    expect(foldEntries(everyCare).cautionsPutAway.get('soil')).toBe('2026-03-12');
  });
});

describe('teaching adds up', () => {
  it('F13 a lesson keeps its changes in order and the days it was given on', () => {
    const changed = written(78, { kind: 'lesson-changed', lesson, to: { opener: 'Look.' } });
    const notebook = foldEntries([changed, ...everyTeaching]);
    expect(notebook.lessons.get(lesson)).toMatchObject({
      seed: 7,
      changes: [{ opener: 'Hold the ruler.' }, { opener: 'Look.' }],
      givenOn: ['2026-03-12'],
    });
  });

  it('F13 answers, questions, reviews and evidence stay as crossed-out lines', () => {
    const back = [74, 75, 76, 77].map((entry, index) => takenBack(80 + index, entry));
    const { answers, ownQuestions, reviews, evidence } = foldEntries([...everyTeaching, ...back]);
    for (const lines of [answers, ownQuestions, reviews, evidence]) {
      expect(lines).toHaveLength(1);
      expect(lines[0]?.takenBack).not.toBeNull();
    }
  });

  it('F13 a lesson that was taken back is gone, and comes back', () => {
    expect(foldEntries([...everyTeaching, takenBack(80, 71)]).lessons.size).toBe(0);
    const undone = [...everyTeaching, takenBack(80, 71), takenBack(81, 80)];
    expect(foldEntries(undone).lessons.size).toBe(1);
  });
});
