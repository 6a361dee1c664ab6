/** Whatever any part returns to be said has its message, and no message claims what the tool must never claim. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { CATALOGUE } from '../packages/words/src/index.ts';

const root = join(import.meta.dirname, '..');

const sources = (folder: string): string[] =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name) && !/\.test\.tsx?$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name));

const SPEAKERS = ['model', 'engine', 'store', 'server', 'cli', 'draw', 'paper', 'web'].map(
  (name) => `packages/${name}/src`,
);
const subjects = [...new Set(Object.keys(CATALOGUE).map((id) => id.split('.')[0]!))];
const FILE_ENDING = /\.(ts|tsx|js|json|csv|html|css|yaml|md|woff2|svg|png|wasm|map)$/;

/** Ids written as one literal, and the fixed beginnings of ids put together from a word of a closed set. */
function idsIn(text: string): { whole: string[]; beginnings: string[] } {
  const literal = new RegExp(
    `['"]((?:${subjects.join('|')}|sign|notice|demand|schedule)\\.[a-z][a-z0-9.-]*)['"]`,
    'g',
  );
  const template = new RegExp(
    `\`((?:${subjects.join('|')}|sign|notice|demand|schedule)\\.[a-z0-9.-]*)\\$\\{`,
    'g',
  );
  const saidId = /\bid:\s*'([a-z]+\.[a-z][a-z0-9.-]*)'/g;
  const found = [...text.matchAll(literal), ...text.matchAll(saidId)]
    .map((match) => match[1]!)
    .filter((id) => CATALOGUE[id] !== undefined || !FILE_ENDING.test(id));
  return {
    whole: found.filter((id) => !/[.-]$/.test(id)),
    beginnings: [
      ...found.filter((id) => /[.-]$/.test(id)),
      ...[...text.matchAll(template)].map((match) => match[1]!),
    ],
  };
}

test('every id said by model, engine, store, server, cli, draw, paper and web has its message', () => {
  const ids = Object.keys(CATALOGUE);
  const missing = SPEAKERS.flatMap((folder) =>
    sources(folder).flatMap((file) => {
      const { whole, beginnings } = idsIn(readFileSync(file, 'utf8'));
      return [
        ...whole.filter((id) => CATALOGUE[id] === undefined),
        ...beginnings.filter((start) => !ids.some((id) => id.startsWith(start))).map((start) => `${start}…`),
      ].map((id) => `${file.slice(root.length + 1)}: ${id}`);
    }),
  );
  expect(missing).toEqual([]);
});

test('every message is said somewhere', () => {
  const said = [...SPEAKERS, 'packages/words/src']
    .flatMap(sources)
    .filter((file) => !file.includes('/words/src/messages/'))
    .map((file) => idsIn(readFileSync(file, 'utf8')));
  const whole = new Set(said.flatMap((ids) => ids.whole));
  const beginnings = [...new Set(said.flatMap((ids) => ids.beginnings))];
  const isSaid = (id: string) => whole.has(id) || beginnings.some((start) => id.startsWith(start));
  expect(Object.keys(CATALOGUE).filter((id) => !isSaid(id))).toEqual([]);
});

/**
 * What the tool must never claim, in any message. It informs; a person clears.
 * From the project's safety specification, section "Never claim"; case does not matter.
 */
const NEVER_CLAIM: readonly RegExp[] = [
  /pasteuri[sz]ed/,
  /\bsterile\b/,
  /\b(fda|usda)[- ]?(approved|compliant)/,
  /\bapproved by the (fda|usda)\b/,
  /haccp plan/,
  /shelf[- ]stable/,
  /allergen[- ]free/,
  /gluten[- ]free/,
  /\bcured\b/,
  /toxins? (is|are|gets?)? ?destroyed/,
  /smoke preserves/,
  /(looks|smells) fine/,
  /colour shows (that it is )?done/,
  /vinegar kills/,
  /freezing kills/,
  /rest makes/,
  /predicts no growth/,
  /% (chance )?(it is |of being )?safe/,
];

/** "Safe" may stand only where it is denied, or where a rule's own threshold is named. */
const SAFE_ALLOWED =
  /\b(not|cannot|never|nothing|no)\b[^.]*\bsafe\b|too \w+ to be safe|safe eating starts at|\bsafest\b/;

const messageTexts = sources('packages/words/src').flatMap((file) =>
  readFileSync(file, 'utf8')
    .split('\n')
    .filter((line) => !/^\s*(\*|\/\*|\/\/)/.test(line))
    .map((line) => ({ where: file.slice(root.length + 1), line: line.toLowerCase() })),
);

test('no message claims what must never be claimed', () => {
  const claims = messageTexts.filter(({ line }) => NEVER_CLAIM.some((claim) => claim.test(line)));
  expect(claims).toEqual([]);
});

test('no message calls anything safe', () => {
  const claims = messageTexts.filter(({ line }) => /\bsafe\b/.test(line) && !SAFE_ALLOWED.test(line));
  expect(claims).toEqual([]);
});

test('messages keep the tone: no exclamation, no please, no success', () => {
  const wrong = messageTexts.filter(({ line }) =>
    /(['"`][^'"`]*\b(please|successfully|oops)\b)|[a-z]!['"`]/.test(line),
  );
  expect(wrong).toEqual([]);
});
