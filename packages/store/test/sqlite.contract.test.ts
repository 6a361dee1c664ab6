// The contract of every store, on SQLite. Evidence: conformity.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, test } from 'vitest';
import { openSqliteStore } from '../src/sqlite/index.ts';
import { CONTRACT } from './contract.ts';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'pitwright-store-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test.each(CONTRACT)('SQLite $name', ({ holds }) =>
  holds({ open: (name) => openSqliteStore(join(folder, `${name}.db`)) }),
);
