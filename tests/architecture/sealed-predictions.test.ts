import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { describe, expect, it } from 'vitest';

/**
 * A child's prediction is sealed until its day. `predictionsOf` in core/growth keeps the seal, so
 * nothing else may look at a notebook's predictions, or into the entries that hold them. Screens
 * may write such an entry. The backup file holds the journal as it is, predictions and all: it is
 * for putting back, is not shown, and a family that opens it in an editor has broken its own seal.
 */
const mayRead = [
  // The fold puts them into the notebook; the door lets them out.
  'src/lib/core/journal/care-bodies.ts',
  'src/lib/core/journal/care-handlers.ts',
  'src/lib/core/journal/care.ts',
  'src/lib/core/journal/fold-care.ts',
  'src/lib/core/growth/predictions-of.ts',
];

const root = process.cwd();
const files = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' })
  .map((file) => posix.join('src', file.split('\\').join('/')))
  .filter((file) => /\.(ts|svelte|js)$/.test(file));

/** Every way found of looking at sealed predictions in a text, quoted. */
const looksIn = (source: string): readonly string[] => {
  const text = source
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/(^|\s)\/\/.*$/gm, '')
    .replace(/<!--[\s\S]*?-->/g, '')
    // A component's own property of that name is what somebody handed to it through the door.
    .replace(/\{[^{}]*\}\s*(:[^=;]*)?=\s*\$props\(\)/g, '');
  return [
    // notebook.predictions, notebook?.predictions, and the same by its name in quotes.
    ...text.matchAll(/\.\s*predictions\b/g),
    ...text.matchAll(/\[\s*['"`]predictions['"`]\s*\]/g),
    // const { predictions } = notebook; ({ predictions }: Notebook) => ...
    ...text.matchAll(/\{[^{}]*\bpredictions\b[^{}]*\}\s*(=(?![=>])|:\s*(Notebook|Care))/g),
    // The entries themselves, unless one is being written.
    ...text.replace(/\bkind:\s*'prediction-sealed'/g, '').matchAll(/prediction-sealed/g),
    ...text.matchAll(/\bSealedPrediction\b/g),
    ...text.matchAll(/EntryOf<\s*'prediction-sealed'/g),
  ].map(([match]) => match.replace(/\s+/g, ' '));
};

describe('the seal on predictions', () => {
  it('is looked behind by the door only', () => {
    const faults = files
      .filter((file) => !mayRead.includes(file))
      .flatMap((file) =>
        looksIn(readFileSync(join(root, file), 'utf8')).map((look) => `${file}: ${look}`),
      );
    expect(faults).toEqual([]);
  });

  it('has its door and its fold where they are said to be', () => {
    const silent = mayRead.filter(
      (file) => looksIn(readFileSync(join(root, file), 'utf8')).length === 0,
    );
    expect(silent).toEqual([]);
  });

  it.each([
    'const sealed = notebook.predictions.get(id);',
    '{#each notebook?.predictions ?? [] as each}',
    "notebook['predictions']",
    'const { estimates, predictions } = notebook;',
    'const { predictions: hidden } = state.notebook;',
    'const count = ({ predictions }: Notebook) => predictions.size;',
    "entries.filter((entry) => entry.kind === 'prediction-sealed')",
    "case 'prediction-sealed':",
    "(entry: EntryOf<'prediction-sealed'>) => entry.measured",
    'let sealed: SealedPrediction;',
  ])('would be broken by %s', (source) => {
    expect(looksIn(source).length).toBeGreaterThan(0);
  });

  it.each([
    'const predictions = predictionsOf(notebook, series, today);',
    'let { predictions }: Props = $props();',
    'let { day, predictions }: { day: CivilDay; predictions: readonly Prediction[] } = $props();',
    "await notebook.write([{ kind: 'prediction-sealed', specimen, day, forDay, measured, because }]);",
    '<PredictionList {predictions} />',
    '// reads notebook.predictions nowhere',
  ])('is kept by %s', (source) => {
    expect(looksIn(source)).toEqual([]);
  });
});
