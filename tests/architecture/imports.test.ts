import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { describe, expect, it } from 'vitest';

/**
 * Who may import whom. A folder may import itself, the folders named here, and the packages named
 * here; everything else is a fault of structure. Type-only imports of `store` are its port.
 */
const coreOrder = [
  ['base'],
  ['measure', 'calendar'],
  ['journal'],
  ['series'],
  ['growth'],
  ['graphs'],
  ['questions'],
  ['lessons'],
  ['exchange'],
];
const purePackages = ['valibot', 'convert-units', 'simple-statistics', 'd3-dsv', 'suncalc'];

const root = process.cwd();
const files = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' })
  .map((file) => posix.join('src', file.split('\\').join('/')))
  .filter((file) => /\.(ts|svelte)$/.test(file));

interface Import {
  readonly file: string;
  readonly from: string;
  readonly isType: boolean;
}

const importsOf = (file: string): Import[] => {
  const text = readFileSync(join(root, file), 'utf8').replace(/\/\*[\s\S]*?\*\//g, '');
  const statements = text.matchAll(
    /^\s*(?:import|export)\s+(type\s+)?(?:[\w*\s{},$]+\s+from\s+)?['"]([^'"]+)['"]/gm,
  );
  const dynamic = text.matchAll(/import\(\s*(?:\/\*.*?\*\/\s*)?['"]([^'"]+)['"]\s*\)/g);
  return [
    ...[...statements].map((match) => ({ file, from: match[2]!, isType: match[1] !== undefined })),
    ...[...dynamic].map((match) => ({ file, from: match[1]!, isType: false })),
  ];
};

const imports = files.flatMap(importsOf);

/** `core/measure`, `store`, `ui/page`, `routes`: the folder whose door another one uses. */
const folderOf = (file: string): string => {
  const parts = file.replace(/^src\/(lib\/)?/, '').split('/');
  return parts[0] === 'core' || parts[0] === 'ui' ? `${parts[0]}/${parts[1]}` : parts[0]!;
};

/** The folder an import leads to, or null for a package. */
const targetOf = ({ file, from }: Import): string | null => {
  if (from.startsWith('#')) return from.slice(1);
  if (from.startsWith('.')) return folderOf(posix.join(posix.dirname(file), from));
  return null;
};

const rankOf = (folder: string): number =>
  coreOrder.findIndex((names) => names.some((name) => `core/${name}` === folder));

const mayImport = (from: string, to: string, isType: boolean): boolean => {
  if (from === to) return true;
  if (from.startsWith('core/')) {
    return to.startsWith('core/') && rankOf(to) >= 0 && rankOf(to) < rankOf(from);
  }
  if (from === 'store') return to.startsWith('core/');
  if (from === 'notebook') return to.startsWith('core/') || to === 'store';
  if (from.startsWith('ui/')) {
    return (
      to.startsWith('core/') ||
      to.startsWith('ui/') ||
      to === 'notebook' ||
      (to === 'store' && isType)
    );
  }
  if (from === 'routes') {
    return to.startsWith('ui/') || to.startsWith('core/') || to === 'notebook';
  }
  return false;
};

describe('the structure', () => {
  it('finds the source', () => {
    expect(files.length).toBeGreaterThan(50);
    expect(imports.length).toBeGreaterThan(100);
  });

  it('imports in one direction only', () => {
    const faults = imports
      .filter((each) => {
        const target = targetOf(each);
        return target !== null && !mayImport(folderOf(each.file), target, each.isType);
      })
      .map(({ file, from }) => `${file} imports ${from}`);
    expect(faults).toEqual([]);
  });

  it('enters another folder through its door only', () => {
    const faults = imports
      .filter((each) => each.from.startsWith('.'))
      .filter((each) => targetOf(each) !== folderOf(each.file))
      .map(({ file, from }) => `${file} reaches into ${from}`);
    expect(faults).toEqual([]);
  });

  it('lets core use pure packages only', () => {
    const faults = imports
      .filter(({ file, from }) => file.startsWith('src/lib/core/') && /^[^.#]/.test(from))
      .filter(
        ({ from }) => !purePackages.some((name) => from === name || from.startsWith(`${name}/`)),
      )
      .map(({ file, from }) => `${file} imports ${from}`);
    expect(faults).toEqual([]);
  });

  it('opens the store in the notebook only', () => {
    const faults = imports
      .filter(
        ({ file, from, isType }) =>
          from === '#store' && !isType && !/lib\/(notebook|store)\//.test(file),
      )
      .map(({ file }) => file);
    expect(faults).toEqual([]);
  });

  it('has one door in every folder of core and ui', () => {
    const folders = [...new Set(files.map(folderOf))].filter((folder) => folder.includes('/'));
    const doors = folders.filter((folder) => files.includes(`src/lib/${folder}/index.ts`));
    expect(doors).toEqual(folders);
  });

  it('names files in one form', () => {
    const faults = files
      .filter((file) => file.startsWith('src/lib/'))
      .map((file) => posix.basename(file))
      .filter(
        (name) => !/^([a-z0-9]+(-[a-z0-9]+)*(\.svelte)?\.ts|[A-Z][A-Za-z0-9]*\.svelte)$/.test(name),
      );
    expect(faults).toEqual([]);
  });
});
