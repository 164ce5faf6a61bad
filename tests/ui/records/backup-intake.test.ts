import { describe, expect, test } from 'vitest';
import { writeBackup } from '#core/exchange';
import { BackupIntake } from '../../../src/lib/ui/records/backup-intake.svelte';
import { backupErrorWords } from '../../../src/lib/ui/records-words/records-words';
import { begun, heights, took, written } from '../../core/journal/entries';
import { aNotebook } from './a-notebook';
import { fileOf, noise } from './files';

const madeAtMs = Date.UTC(2026, 2, 9, 8);
const entries = [...begun, took(5, '2026-03-02', 3), took(6, '2026-03-03', 4)];
const backup = writeBackup(entries, madeAtMs);

async function intakeOf(content: string | Uint8Array<ArrayBuffer>, here: typeof entries = []) {
  const notebook = await aNotebook();
  await notebook.bringIn(here);
  const intake = new BackupIntake(notebook);
  await intake.choose(fileOf(content, 'backup.json'));
  return { intake, notebook };
}

describe('a backup file', () => {
  test('says what is in it before anything is added', async () => {
    const { intake, notebook } = await intakeOf(backup, [...begun, entries[4]!]);
    expect(intake.stage).toMatchObject({
      kind: 'found',
      contents: {
        lineCount: 6,
        newCount: 1,
        investigations: [
          { investigation: { title: 'Our beans' }, logLineCount: 2, newLogLineCount: 1 },
        ],
      },
    });
    expect(notebook.entries).toHaveLength(5);
  });

  test('is added once; the second time everything was here already', async () => {
    const { intake, notebook } = await intakeOf(backup);
    await intake.add();
    expect(intake.stage).toMatchObject({ kind: 'added', added: 6, known: 0 });
    expect(notebook.entries).toHaveLength(6);
    await intake.choose(fileOf(backup, 'backup.json'));
    expect(intake.stage).toMatchObject({ kind: 'found', contents: { newCount: 0 } });
    await intake.add();
    expect(intake.stage).toMatchObject({ kind: 'added', added: 0, known: 6 });
  });

  test('with lines of a newer program keeps them and counts them', async () => {
    const strange = { ...written(9, { kind: 'notebook-begun', title: 'x' }), kind: 'moon-seen' };
    const { intake, notebook } = await intakeOf(writeBackup([...entries, strange], madeAtMs));
    expect(intake.stage).toMatchObject({ contents: { notUnderstoodCount: 1, lineCount: 7 } });
    await intake.add();
    expect(notebook.contents.notUnderstoodCount).toBe(1);
    expect(writeBackup(notebook.entries, madeAtMs)).toBe(
      writeBackup([...entries, strange], madeAtMs),
    );
  });

  test('with a removed investigation lists it as removed', async () => {
    const removal = written(7, {
      kind: 'investigation-removed',
      investigation: heights,
    });
    const { intake } = await intakeOf(writeBackup([...entries, removal], madeAtMs));
    expect(intake.stage).toMatchObject({ contents: { investigations: [{ isRemoved: true }] } });
  });
});

describe('a file that is no whole backup is refused and the notebook untouched:', () => {
  const cases: readonly (readonly [string, string | Uint8Array<ArrayBuffer>, RegExp])[] = [
    ['an empty one', '', /empty/],
    ['one that breaks off', backup.slice(0, 700), /breaks off after 700 characters/],
    ['one with a changed word', backup.replace('Wren', 'Wrex'), /changed or damaged/],
    [
      'one with a line less',
      backup.replace(/,\n\{[^\n]*\n\]/, '\n]'),
      /holds 6 lines, and 5 are there/,
    ],
    [
      'one with a broken middle',
      backup.replace('"kind":"person-added"', '"kind":person'),
      /cannot be read past character \d/,
    ],
    [
      'one by a newer program',
      backup.replace('"version": 1', '"version": 2'),
      /newer Morning Measure/,
    ],
    ['other JSON', '{"day": 3}', /another kind/],
    ['other text', 'Dear diary', /another kind/],
    ['noise', noise(5000), /not text/],
  ];

  test.each(cases)('%s', async (_, content, words) => {
    const { intake, notebook } = await intakeOf(content, entries);
    const { stage } = intake;
    if (stage.kind !== 'refused') throw new Error(`It was not refused: ${stage.kind}`);
    expect(backupErrorWords(stage.error)).toMatch(words);
    expect(notebook.entries).toHaveLength(6);
  });
});

test('a backup that is stopped while it is read is let go', async () => {
  const notebook = await aNotebook();
  const intake = new BackupIntake(notebook);
  const reading = intake.choose(fileOf(backup, 'backup.json'));
  intake.stop();
  await reading;
  expect(intake.stage).toEqual({ kind: 'none' });
});
