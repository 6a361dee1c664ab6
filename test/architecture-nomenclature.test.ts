/** Every name of docs/nomenclature.md is a name of the code, and stands there once. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const ROOT = join(import.meta.dirname, '..');
const page = readFileSync(join(ROOT, 'docs/nomenclature.md'), 'utf8');

/** First cells of the tables below the endings: `name`, or several parted by commas. */
const names = page
  .slice(page.indexOf('## Air'))
  .split('\n')
  .filter((line) => line.startsWith('| `'))
  .flatMap((line) => [...line.split('|')[1]!.matchAll(/`(\w+)`/g)].map((match) => match[1]!));

const code = readdirSync(join(ROOT, 'packages'), { recursive: true, withFileTypes: true })
  .filter(
    (entry) =>
      entry.isFile() && /(?<!\.test)\.ts$/.test(entry.name) && !entry.parentPath.includes('node_modules'),
  )
  .map((entry) => readFileSync(join(entry.parentPath, entry.name), 'utf8'))
  .join('\n');

test('every name is used in the code', () => {
  const words = new Set(code.match(/\b\w+\b/g));
  expect(names.length).toBeGreaterThan(40);
  expect(names.filter((name) => !words.has(name))).toEqual([]);
});

test('no name stands twice but where two subjects share it', () => {
  expect([...new Set(names.filter((name, i) => names.indexOf(name) !== i))]).toEqual([]);
});
