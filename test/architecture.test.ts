/**
 * The arrows of the house run one way, between packages and between the engine's rooms, packages are entered by their
 * door, and the pure packages stay pure.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';

const ROOT = join(import.meta.dirname, '..');

/** What each package may use. The command line starts the server, and app and command line share the paper. */
const PACKAGES: Readonly<Record<string, readonly string[]>> = {
  model: [],
  engine: ['model'],
  words: ['model'],
  draw: ['model'],
  store: ['model'],
  paper: ['model', 'engine', 'words', 'draw'],
  server: ['model', 'engine', 'words', 'draw', 'store'],
  web: ['model', 'engine', 'words', 'draw', 'paper', 'store'],
  cli: ['model', 'engine', 'words', 'draw', 'paper', 'store', 'server'],
};
/** Packages without files, network, clock, chance or screen. */
const PURE = ['model', 'engine', 'words', 'draw', 'paper'];

/** The engine's rooms, left to right: a room may use those of an earlier row, its own files, and the contract of calc. */
const ROOMS: readonly (readonly string[])[] = [
  ['numeric'],
  ['air', 'food'],
  ['heat'],
  ['meat', 'fire', 'sauce'],
  ['day', 'tender'],
  ['safety', 'forecast'],
  ['guests', 'schedule'],
  ['choices'],
  ['writeup'],
  ['calc'],
];
/** Files of calc that every room uses to export its list; the rest of calc gathers the rooms and stands last. */
const CALC_CONTRACT = ['spec.ts', 'problem.ts', 'given.ts', 'describe.ts'];

interface Source {
  /** From the root, with forward slashes. */
  readonly path: string;
  readonly package: string;
  readonly text: string;
  readonly imports: readonly string[];
}

const isTest = (path: string): boolean => /\.(test|testing|test-d)\.tsx?$/.test(path);

const sources: Source[] = Object.keys(PACKAGES).flatMap((name) => {
  const folder = join(ROOT, 'packages', name, 'src');
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name) && !isTest(entry.name))
    .map((entry) => {
      const file = join(entry.parentPath, entry.name);
      const text = readFileSync(file, 'utf8');
      const imports = ts.preProcessFile(text, true, true).importedFiles.map((found) => found.fileName);
      return { path: relative(ROOT, file).split(sep).join('/'), package: name, text, imports };
    });
});

/** Every import of every file, judged by one rule. */
const offences = (judge: (source: Source, specifier: string) => string | undefined): string[] =>
  sources.flatMap((source) =>
    source.imports.flatMap((specifier) => {
      const offence = judge(source, specifier);
      return offence === undefined ? [] : [`${source.path}: ${specifier} (${offence})`];
    }),
  );

interface Manifest {
  readonly exports: Readonly<Record<string, unknown>>;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
}
const manifestOf = (name: string): Manifest =>
  JSON.parse(readFileSync(join(ROOT, 'packages', name, 'package.json'), 'utf8')) as Manifest;

const targetOf = (source: Source, specifier: string): string =>
  relative(ROOT, resolve(ROOT, source.path, '..', specifier.split('?')[0]!))
    .split(sep)
    .join('/');

test('the house was looked at: every package has a place and files, and they import', () => {
  expect(readdirSync(join(ROOT, 'packages')).filter((name) => !(name in PACKAGES))).toEqual([]);
  for (const name of Object.keys(PACKAGES))
    expect(
      sources.some((source) => source.package === name),
      name,
    ).toBe(true);
  expect(sources.flatMap((source) => source.imports).length).toBeGreaterThan(50);
});

describe('packages', () => {
  test('use only what stands to their right', () => {
    expect(
      offences((source, specifier) => {
        const used = /^@pitwright\/([^/]+)/.exec(specifier)?.[1];
        return used === undefined || PACKAGES[source.package]!.includes(used)
          ? undefined
          : `${source.package} never uses ${used}`;
      }),
    ).toEqual([]);
  });

  test('are entered by their door', () => {
    expect(
      offences((source, specifier) => {
        const [, used, door] = /^@pitwright\/([^/]+)\/(.+)$/.exec(specifier) ?? [];
        if (used !== undefined && !(`./${door}` in manifestOf(used).exports))
          return 'no door of that package';
        if (!specifier.startsWith('.')) return undefined;
        const target = targetOf(source, specifier);
        // The examples are shipped with the app, so it may read them as text.
        const isInside =
          target.startsWith(`packages/${source.package}/`) ||
          /^examples\/.*\?raw$/.test(`${target}?${specifier.split('?')[1]}`);
        return isInside ? undefined : 'leaves its package by the window';
      }),
    ).toEqual([]);
  });

  test('name the file they import, and it is there', () => {
    expect(
      offences((source, specifier) => {
        if (!specifier.startsWith('.')) return undefined;
        if (!/\.[a-z0-9]+(\?[a-z]+)?$/.test(specifier)) return 'an import ends in the name of a file';
        return existsSync(join(ROOT, targetOf(source, specifier))) ? undefined : 'no such file';
      }),
    ).toEqual([]);
  });

  test('declare what they use', () => {
    for (const [name, allowed] of Object.entries(PACKAGES)) {
      const { dependencies = {}, devDependencies = {} } = manifestOf(name);
      const declared = Object.keys(dependencies);
      const own = declared.flatMap((each) => (each.startsWith('@pitwright/') ? [each.slice(11)] : []));
      expect(
        own.filter((each) => !allowed.includes(each)),
        name,
      ).toEqual([]);
      const used = sources
        .filter((source) => source.package === name)
        .flatMap((source) => source.imports)
        .filter((specifier) => !/^(\.|node:|virtual:)/.test(specifier))
        .map((specifier) =>
          specifier
            .split('/')
            .slice(0, specifier.startsWith('@') ? 2 : 1)
            .join('/'),
        );
      const undeclared = [...new Set(used)].filter(
        (each) => !declared.includes(each) && !(each in devDependencies),
      );
      expect(undeclared, name).toEqual([]);
    }
  });
});

/** Row of the room a file of the engine stands in; undefined for the door itself. */
function rowOf(path: string): number | undefined {
  const [, room, file] = /^packages\/engine\/src\/([^/]+)\/(?:.*\/)?([^/]+)$/.exec(path) ?? [];
  if (room === undefined) return undefined;
  if (room === 'calc' && CALC_CONTRACT.includes(file!)) return 0;
  return ROOMS.findIndex((row) => row.includes(room));
}
const roomOf = (path: string): string | undefined => /^packages\/engine\/src\/([^/]+)\//.exec(path)?.[1];

describe('rooms of the engine', () => {
  test('have a place in the row', () => {
    const rooms = sources.flatMap((source) =>
      source.package === 'engine' ? (roomOf(source.path) ?? []) : [],
    );
    expect([...new Set(rooms)].filter((room) => !ROOMS.some((row) => row.includes(room)))).toEqual([]);
  });

  test('use only what stands to their left', () => {
    expect(
      offences((source, specifier) => {
        if (source.package !== 'engine' || !specifier.startsWith('.')) return undefined;
        const target = targetOf(source, specifier);
        const [own, used] = [roomOf(source.path), roomOf(target)];
        if (own === undefined) return undefined;
        if (used === undefined) return 'no room uses the door of the engine';
        if (own === used)
          return rowOf(source.path)! === 0 && rowOf(target)! > 0
            ? 'the contract of calc knows no room'
            : undefined;
        return rowOf(target)! < rowOf(source.path)! ? undefined : `${own} never uses ${used}`;
      }),
    ).toEqual([]);
  });
});

/** Words of a machine or a screen, of a clock and of unseeded chance. */
const IMPURE =
  /\b(?:Date\.now|new Date\(\)|Math\.random|performance\.now|Temporal\.Now|crypto\.|process\.|globalThis\.|window\.|document\.(?:create|query|get|body)|localStorage|indexedDB|fetch\(|setTimeout\(|setInterval\(|import\.meta\.url)/;

/** The text without comments and without what stands in quotes. */
const codeOf = (text: string): string =>
  text.replace(/\/\*[\s\S]*?\*\/|(?<![:'"`])\/\/.*$|'(?:[^'\\\n]|\\.)*'/gm, "''");

describe('the pure packages', () => {
  test('import nothing of the machine', () => {
    expect(
      offences((source, specifier) =>
        PURE.includes(source.package) && /^(node:|fs$|path$|os$|worker_threads$)/.test(specifier)
          ? `${source.package} is pure`
          : undefined,
      ),
    ).toEqual([]);
  });

  test('know no clock, no chance without a seed, no machine and no screen', () => {
    const found = sources
      .filter((source) => PURE.includes(source.package))
      .flatMap((source) => {
        const word = IMPURE.exec(codeOf(source.text))?.[0];
        return word === undefined ? [] : [`${source.path}: ${word}`];
      });
    expect(found).toEqual([]);
  });
});
