import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';

/**
 * Runs every docstring example of core, with all exports of every core door (and those of the
 * example's own file) in scope, and asks every function that a door lets out for one.
 */
type Exports = Readonly<Record<string, unknown>>;

const loaders = import.meta.glob<Exports>('/src/lib/core/**/*.ts');
const root = new URL('../..', import.meta.url);

/** Functions that no one-line example can show. Each needs its reason here. */
const exemptNames: ReadonlySet<string> = new Set([]);

interface Example {
  readonly expression: string;
  readonly expected: string;
}

interface Documented {
  readonly name: string;
  readonly examples: readonly Example[];
  /** Lines under @example that are not `expression // => expected`, and so would never run. */
  readonly unreadable: readonly string[];
}

const files = await Promise.all(
  Object.entries(loaders)
    .filter(([path]) => !path.endsWith('.d.ts'))
    .map(async ([path, load]) => {
      const source = readFileSync(new URL(`.${path}`, root), 'utf8');
      // A folder half written must not hide the examples of the others.
      const loaded = await load().then(
        (exports): Loaded => ({ exports }),
        (failure: unknown): Loaded => ({ exports: {}, failure }),
      );
      return { path, documented: documentedIn(path, source), ...loaded };
    }),
);

interface Loaded {
  readonly exports: Exports;
  readonly failure?: unknown;
}

const doors = files.filter(({ path }) => /^\/src\/lib\/core\/[^/]+\/index\.ts$/.test(path));
const doorScope = Object.assign({}, ...doors.map((door) => door.exports)) as Exports;
const examplesOf = (documented: readonly Documented[]) =>
  documented.flatMap(({ name, examples }) => examples.map((example) => ({ name, ...example })));
const total = files.flatMap((file) => examplesOf(file.documented)).length;

describe(`the ${total} docstring examples of core`, () => {
  test('are there to be run', () => {
    expect(total).toBeGreaterThan(20);
  });

  for (const { path, documented, exports, failure } of files) {
    const examples = examplesOf(documented);
    const broken = documented.flatMap(({ name, unreadable }) =>
      unreadable.map((line) => `${name}: ${line}`),
    );
    if (failure !== undefined) {
      test(`${path} can be loaded`, () => {
        throw failure;
      });
      continue;
    }
    if (examples.length === 0 && broken.length === 0) continue;
    describe(`${path} (${examples.length})`, () => {
      for (const { name, expression, expected } of examples) {
        test(`${name}: ${expression}`, () => {
          const scope = { ...doorScope, ...exports };
          expect(evaluate(expression, scope)).toEqual(evaluate(expected, scope));
        });
      }
      test('has only example lines that can be run', () => {
        expect(broken).toEqual([]);
      });
    });
  }
});

describe('the doors of core', () => {
  test('never use one name for two things', () => {
    const clashes = doors.flatMap((door) =>
      Object.keys(door.exports).filter((name) => door.exports[name] !== doorScope[name]),
    );
    expect(clashes).toEqual([]);
  });

  for (const { path, exports } of doors) {
    const folder = path.replace('index.ts', '');
    const functions = Object.keys(exports).filter((name) => typeof exports[name] === 'function');
    if (functions.length === 0) continue;
    test(`${folder} shows an example of each of its ${functions.length} functions`, () => {
      const shown = files
        .filter((file) => file.path.startsWith(folder))
        .flatMap((file) => file.documented)
        .filter(({ examples }) => examples.length > 0)
        .map(({ name }) => name);
      const silent = functions.filter((name) => !shown.includes(name) && !exemptNames.has(name));
      expect(silent).toEqual([]);
    });
  }
});

function documentedIn(path: string, source: string): readonly Documented[] {
  const parsed = ts.createSourceFile(path, source, ts.ScriptTarget.ES2022, true);
  const exampleTags = (statement: ts.Statement) =>
    ts.getJSDocTags(statement).filter((tag) => tag.tagName.text === 'example');
  const found = parsed.statements.flatMap(exampleTags).length;
  const written = source.match(/^\s*\*\s*@example\b/gm)?.length ?? 0;
  // An example on a member or inside a function would be read by people and run by nobody.
  const unseen = found === written ? [] : [`${written - found} of ${written} @example not reached`];
  const documented = parsed.statements.flatMap((statement) => {
    const lines = exampleTags(statement).flatMap((tag) => tagLines(tag));
    return namesOf(statement).map((name) => ({
      name,
      examples: lines.flatMap((line) => exampleIn(line) ?? []),
      unreadable: lines.filter((line) => !exampleIn(line)),
    }));
  });
  return [...documented, { name: 'this file', examples: [], unreadable: unseen }];
}

function namesOf(statement: ts.Statement): readonly string[] {
  if (ts.isVariableStatement(statement)) {
    return statement.declarationList.declarations.map(({ name }) => name.getText());
  }
  const declares =
    ts.isFunctionDeclaration(statement) ||
    ts.isClassDeclaration(statement) ||
    ts.isInterfaceDeclaration(statement) ||
    ts.isTypeAliasDeclaration(statement);
  return declares && statement.name ? [statement.name.text] : [];
}

/** The lines of a tag as they were typed: the compiler would read `{@` and `@` inside as tags. */
function tagLines(tag: ts.JSDocTag): readonly string[] {
  return tag
    .getText()
    .replace(/^@example/, '')
    .split('\n')
    .map((line) => line.replace(/^\s*\*?\s?/, '').trim())
    .filter((line) => line !== '' && line !== '/');
}

function exampleIn(line: string): Example | undefined {
  const [expression, expected, ...more] = line.split(' // => ');
  return expression && expected && more.length === 0 ? { expression, expected } : undefined;
}

function evaluate(expression: string, scope: Exports): unknown {
  const names = Object.keys(scope);
  const run = new Function(...names, `'use strict'; return (${expression});`) as (
    ...values: unknown[]
  ) => unknown;
  return run(...names.map((name) => scope[name]));
}
