/**
 * What SQLite's store does when things go wrong, on real files and real processes: kill, full disk, lock, damage,
 * other versions. Evidence: conformity.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import {
  chmodSync,
  copyFileSync,
  mkdtempSync,
  openSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { createEntry, type Entry, type Subject, setEntry } from '@pitwright/model';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readHistory, type Store } from '../src/index.ts';
import { openSqliteFile } from '../src/sqlite/driver.ts';
import { openSqliteStore } from '../src/sqlite/index.ts';
import { SCHEMA_VERSION } from '../src/sqlite/schema.ts';
import { storeIn } from '../src/sqlite/store.ts';
import { bundleForNode } from './bundle-node.ts';

const cook: Subject = { kind: 'cook', id: 'dinner' };
const create = createEntry(cook, { id: 'dinner', name: 'Dinner' });
const note = (value: string) => setEntry(cook, [{ path: ['note'], value }]);

let folder: string;
let writer: { readonly script: string; readonly folder: string };
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'pitwright-faults-'));
  writer = await bundleForNode(new URL('./writer.ts', import.meta.url));
});
afterAll(() => {
  for (const made of [folder, writer.folder]) rmSync(made, { recursive: true, force: true });
});

async function entriesIn(store: Store): Promise<readonly Entry[]> {
  return [...(await readHistory(store)).entries.values()];
}

/** Lets the writer run until it has acknowledged `enough` entries, kills it, and waits for its end. */
async function killAfter(child: ChildProcess, enough: number): Promise<number> {
  const ended = new Promise((resolve) => child.once('close', resolve));
  let acknowledged = 0;
  let count = 0;
  for await (const line of createInterface({ input: child.stdout! })) {
    acknowledged = Number(line);
    count += 1;
    if (count === enough) child.kill('SIGKILL');
  }
  await ended;
  expect(child.signalCode).toBe('SIGKILL');
  return acknowledged;
}

test('100 SIGKILLs during writes lose no acknowledged entry, and leave no gap', async () => {
  const path = join(folder, 'killed.db');
  for (let round = 0; round < 100; round++) {
    const child = spawn(process.execPath, [writer.script, path], { stdio: ['ignore', 'pipe', 'inherit'] });
    const acknowledged = await killAfter(child, 1 + (round % 23));
    const store = await openSqliteStore(path);
    const { last } = await store.readSince(0, 1);
    const tail = await store.readSince(Math.max(0, last - 40));
    await store.close();
    expect(last).toBeGreaterThanOrEqual(acknowledged);
    // At most the one entry that was being written when the kill came.
    expect(last).toBeLessThanOrEqual(acknowledged + 1);
    expect(tail.entries.map((entry) => entry.seq)).toEqual(
      tail.entries.map((_, i) => last - tail.entries.length + 1 + i),
    );
  }
}, 300_000);

describe('a disk that takes no more', () => {
  test('SQLite’s own limit: the write is refused whole and said, what was stored stays, and room heals it', async () => {
    const file = openSqliteFile(join(folder, 'full.db'));
    const store = await storeIn(file);
    await store.write([create, note('kept')]);
    const before = await entriesIn(store);
    file.run('PRAGMA max_page_count = 20');
    const large = Array.from({ length: 40 }, () => note('x'.repeat(4000)));
    await expect(store.write(large)).rejects.toMatchObject({ said: { id: 'store.disk-full' } });
    expect(await entriesIn(store)).toEqual(before);
    file.run('PRAGMA max_page_count = 100000');
    expect((await store.write([note('again')]))[0]?.seq).toBe(3);
    await store.close();
  });

  test('a write that the system refuses: said by the process itself, and every acknowledged entry is there', async () => {
    const path = join(folder, 'limited.db');
    // A limit on the size of a file, in units of 1024 bytes; the signal that comes with it is ignored.
    const child = spawn(
      'bash',
      ['-c', `trap '' XFSZ; ulimit -f 400; exec "$0" "$1" "$2" 9000`, process.execPath, writer.script, path],
      {
        stdio: ['ignore', 'pipe', 'inherit'],
      },
    );
    const lines: string[] = [];
    for await (const line of createInterface({ input: child.stdout! })) lines.push(line);
    expect(JSON.parse(lines.at(-1)!.replace('fault ', ''))).toEqual({
      id: 'store.disk-refuses',
      params: { path },
    });
    const store = await openSqliteStore(path);
    const acknowledged = Number(lines.at(-2));
    expect(acknowledged).toBeGreaterThan(5);
    expect((await entriesIn(store)).map((entry) => entry.seq).slice(0, acknowledged)).toEqual(
      Array.from({ length: acknowledged }, (_, i) => i + 1),
    );
    await store.close();
  });
});

test('a file that another process has locked is said, and written once it is free', async () => {
  const path = join(folder, 'locked.db');
  const store = await openSqliteStore(path, { waitMs: 50 });
  await store.write([create]);
  const other = openSqliteFile(path);
  other.run('BEGIN IMMEDIATE');
  await expect(store.write([note('waits')])).rejects.toMatchObject({
    said: { id: 'store.locked', params: { path } },
  });
  // Reading goes on meanwhile.
  expect(await entriesIn(store)).toHaveLength(1);
  other.run('COMMIT');
  expect((await store.write([note('goes')]))[0]?.seq).toBe(2);
  await store.close();
});

describe('a damaged file', () => {
  async function storedFile(name: string): Promise<string> {
    const path = join(folder, name);
    const store = await openSqliteStore(path);
    await store.write([create, ...Array.from({ length: 60 }, (_, i) => note(`${i}`.repeat(300)))]);
    await store.close();
    // As another process finds it: a file of its own, with no connection of this one behind it.
    const found = join(folder, `found-${name}`);
    copyFileSync(path, found);
    return found;
  }

  const overwrite = (path: string, from: number, length: number) => {
    const file = openSync(path, 'r+');
    writeSync(file, Buffer.alloc(length, 0xa5), 0, length, from);
  };

  test.each([
    ['no database at all', (path: string) => writeFileSync(path, 'pieces:\n  - rack\n'.repeat(400))],
    ['a broken head', (path: string) => overwrite(path, 0, 64)],
    ['a broken page', (path: string) => overwrite(path, 4096 * 5, 4096)],
    ['a missing end', (path: string) => truncateSync(path, 4096 * 4 + 100)],
  ])('%s is said when it is opened, and the file is left byte for byte', async (name, damage) => {
    const path = await storedFile(`${name.replaceAll(' ', '-')}.db`);
    damage(path);
    const before = readFileSync(path);
    await expect(openSqliteStore(path)).rejects.toMatchObject({
      said: { id: 'store.damaged', params: { path } },
    });
    expect(readFileSync(path).equals(before)).toBe(true);
  });

  test('a damaged write-ahead log loses at most what it held, and the store opens', async () => {
    const path = await storedFile('log.db');
    writeFileSync(`${path}-wal`, Buffer.alloc(9000, 0xa5));
    const store = await openSqliteStore(path);
    expect(await entriesIn(store)).toHaveLength(61);
    await store.close();
  });
});

test('a place where nothing can be made is said', async () => {
  await expect(openSqliteStore(join(folder, 'no-such-folder', 'x.db'))).rejects.toMatchObject({
    said: { id: 'store.not-writable' },
  });
});

describe('versions', () => {
  const frozen = fileURLToPath(new URL('./fixtures/schema-1.db', import.meta.url));

  test('a database of schema version 1 opens, comes to the present version and gives its entries', async () => {
    const path = join(folder, 'version-1.db');
    copyFileSync(frozen, path);
    chmodSync(path, 0o600);
    const store = await openSqliteStore(path);
    const { state } = await readHistory(store);
    expect(state.cooks.get('dinner')).toEqual({
      id: 'dinner',
      document: { id: 'dinner', name: 'Regatta dinner', pieces: [{ id: 'rack', bite: 'clean-bite' }] },
      isRemoved: false,
      createdAt: '2027-09-11T06:00:00.000Z',
      changedAt: '2027-09-11T06:00:00.000Z',
    });
    expect(state.logs.get('dinner')?.map((entry) => entry.what)).toEqual(['log.look']);
    expect((await store.outbox()).map((entry) => entry.seq)).toEqual([3, 4, 5]);
    expect(await store.peer()).toEqual({ storeId: 'harbour', cursor: 2 });
    expect((await store.write([note('newer')]))[0]).toMatchObject({ seq: 6, clock: 6 });
    await store.close();
    const rows = openSqliteFile(path).run(`SELECT value FROM meta WHERE key = 'schema'`);
    expect(rows).toMatchObject([{ value: String(SCHEMA_VERSION) }]);
  });

  test('a database of a newer version is said and left alone', async () => {
    const path = join(folder, 'newer.db');
    copyFileSync(frozen, path);
    chmodSync(path, 0o600);
    openSqliteFile(path).run(`UPDATE meta SET value = '99' WHERE key = 'schema'`);
    await expect(openSqliteStore(path)).rejects.toMatchObject({
      said: { id: 'store.newer', params: { version: 99, known: SCHEMA_VERSION } },
    });
  });
});

test('a copy made while entries are written is whole, and another store that writes after what it holds', async () => {
  const store = await openSqliteStore(join(folder, 'live.db'));
  await store.write([create]);
  const writing = Promise.all(Array.from({ length: 50 }, (_, i) => store.write([note(`${i}`)])));
  const target = join(folder, "copy 'of' it.db");
  await store.copyTo(target);
  await writing;
  const copy = await openSqliteStore(target);
  expect(copy.storeId).not.toBe(store.storeId);
  expect(copy.device).not.toBe(store.device);
  const seqs = (await entriesIn(copy)).map((entry) => entry.seq);
  expect(seqs).toEqual(seqs.map((_, i) => i + 1));
  const greatest = Math.max(...(await entriesIn(copy)).map((entry) => entry.clock));
  expect((await copy.write([note('in the copy')]))[0]).toMatchObject({ seq: 1, clock: greatest + 1 });
  await expect(store.copyTo(target)).rejects.toThrow();
  expect(statSync(target).size).toBeGreaterThan(0);
  await store.close();
  await copy.close();
});
