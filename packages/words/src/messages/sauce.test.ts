/** Whatever the sauce room says has its words, and no message waits for something that nobody says. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { sauceMessages } from './sauce.ts';

const ROOM = new URL('../../../engine/src/sauce/', import.meta.url);
const said = new Set(
  (readdirSync(ROOM, { recursive: true }) as string[])
    .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'))
    .flatMap((name) => [
      ...readFileSync(new URL(name, ROOM), 'utf8').matchAll(/'(sauce\.(?!md')[a-z0-9-]+)'/g),
    ])
    .map((match) => match[1]!),
);

test('every id of the room has its message, and the other way round', () => {
  expect([...said].filter((id) => !(id in sauceMessages)).sort()).toEqual([]);
  expect(
    Object.keys(sauceMessages)
      .filter((id) => !said.has(id))
      .sort(),
  ).toEqual([]);
});
