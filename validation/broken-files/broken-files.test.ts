/** Every broken file gets the sentences that stand beside it: all of them, each at its place. */
import { readdirSync, readFileSync } from 'node:fs';
import { readCookFile } from '@pitwright/model';
import { METRIC, say } from '@pitwright/words';
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
