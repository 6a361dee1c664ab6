/** Every broken file gets the sentences that stand beside it: all of them, each at its place. */
import { readdirSync, readFileSync } from 'node:fs';
import { readCookFile } from '@pitwright/model';
import { CATALOGUE, METRIC, say } from '@pitwright/words';
import { expect, test } from 'vitest';

const FOLDER = new URL('./', import.meta.url);
const fileNames = readdirSync(FOLDER)
  .filter((file) => file.endsWith('.pitwright.yaml'))
  .map((file) => file.replace('.pitwright.yaml', ''));
const textOf = (file: string): string => readFileSync(new URL(file, FOLDER), 'utf8');

test('the corpus holds at least forty ways of being wrong', () => {
  expect(fileNames.length).toBeGreaterThanOrEqual(40);
});

test.each(fileNames)('%s', (name) => {
  const read = readCookFile(textOf(`${name}.pitwright.yaml`));
  const sentences = read.ok
    ? []
    : read.problems.map((problem) => `${problem.line}:${problem.column} ${say(problem, METRIC)}`);
  expect(sentences).toEqual(textOf(`${name}.expected.txt`).trimEnd().split('\n'));
});

test('a file too large for any cook is refused before it is parsed', () => {
  const read = readCookFile(`kind: cook\nnote: ${'a'.repeat(300_000)}\n`);
  expect(read.ok ? [] : read.problems.map((problem) => say(problem, METRIC))).toEqual([
    'The file has 300018 characters, more than any cook needs (256000); is it another file?',
  ]);
});

/** Ids that no file of a few lines can bring about, or that are no problem of a file. */
const ELSEWHERE = ['file.too-large', 'file.comments-lost', 'file.notes-shared', 'quantity.not-finite'];

test('every sentence about a broken file has a file that gets it', () => {
  const met = new Set(
    fileNames.flatMap((name) => {
      const read = readCookFile(textOf(`${name}.pitwright.yaml`));
      return read.ok ? [] : read.problems.map(({ id }) => id);
    }),
  );
  const known = Object.keys(CATALOGUE).filter((id) => /^(?:file|quantity)\./.test(id));
  expect(known.filter((id) => !met.has(id) && !ELSEWHERE.includes(id))).toEqual([]);
});

/** Long enough that a step that grows with the square of the length would never end. */
const LENGTH = 100_000;
test.each([
  ['brackets', '['.repeat(LENGTH)],
  ['hyphens', '- '.repeat(LENGTH / 2)],
  ['question marks', '? '.repeat(LENGTH / 2)],
  ['quotes', '"'.repeat(LENGTH)],
  ['anchors', '&a '.repeat(LENGTH / 3)],
  ['tags', '! '.repeat(LENGTH / 2)],
  ['indents', Array.from({ length: 600 }, (_, width) => `${' '.repeat(width)}a:`).join('\n')],
  ['digits', `kind: pit\nversion: 1\nname: Pit\ntype: drum\ntemperature: ${'1'.repeat(LENGTH)}\n`],
  ['one key again and again', 'a: 1\n'.repeat(LENGTH / 5)],
])('a file full of %s is refused', (_, text) => {
  const read = readCookFile(text);
  expect(read.ok).toBe(false);
  for (const problem of read.ok ? [] : read.problems.slice(0, 60)) expect(say(problem, METRIC)).not.toBe('');
});
