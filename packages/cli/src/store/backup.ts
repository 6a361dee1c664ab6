import { closeSync, existsSync, fsyncSync, mkdirSync, openSync, rmSync, writeSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Said } from '@pitwright/model';
import { defaultDataDir, STORE_FILE } from '@pitwright/server';
import { StoreFault } from '@pitwright/store';
import { openSqliteStore, type SqliteStore } from '@pitwright/store/sqlite';
import { METRIC, say } from '@pitwright/words';
import type { Streams } from '../calc/command.ts';

/**
 * Writes a dated copy of the store, also while a server is using it: a database to put in its place, and the entries one
 * a line for `replay` and for the day when no program reads that database.
 * @returns the exit status
 */
export async function backup(
  options: { readonly data?: string; readonly to?: string },
  streams: Streams,
  now = new Date(),
): Promise<number> {
  const tell = (said: Said) => `${say(said, METRIC)}\n`;
  const dataDir = resolve(options.data ?? defaultDataDir());
  const storeFile = join(dataDir, STORE_FILE);
  if (!existsSync(storeFile)) {
    streams.err(tell({ id: 'backup.nothing-kept', params: { folder: dataDir } }));
    return 1;
  }
  const folder = resolve(options.to ?? join(dataDir, 'backups'));
  const stem = join(
    folder,
    `pitwright-${now
      .toISOString()
      .replaceAll(':', '-')
      .replace(/\.\d+Z$/, 'Z')}`,
  );
  let store: SqliteStore | undefined;
  let isBegun = false;
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    if (existsSync(`${stem}.db`))
      throw new StoreFault({ id: 'backup.there-already', params: { path: `${stem}.db` } });
    closeSync(openSync(`${stem}.db`, 'wx', 0o600));
    isBegun = true;
    store = await openSqliteStore(storeFile);
    await store.copyTo(`${stem}.db`);
    const count = await writeEntries(`${stem}.db`, `${stem}.jsonl`);
    streams.out(tell({ id: 'backup.written', params: { count, stem } }));
    return 0;
  } catch (cause) {
    if (isBegun) for (const half of [`${stem}.db`, `${stem}.jsonl`]) rmSync(half, { force: true });
    if (!(cause instanceof StoreFault)) {
      const isFileTrouble = cause instanceof Error && 'code' in cause;
      if (!isFileTrouble) throw cause;
      streams.err(tell({ id: 'backup.not-written', params: { folder, why: cause.message } }));
    } else streams.err(tell(cause.said));
    return 1;
  } finally {
    await store?.close();
  }
}

/** Reads the copy back, so that what is said to be written has been read once. @returns how many entries */
async function writeEntries(database: string, lines: string): Promise<number> {
  const copy = await openSqliteStore(database, { isAlone: true });
  const file = openSync(lines, 'wx', 0o600);
  let count = 0;
  try {
    for (let cursor = 0; ; ) {
      const page = await copy.readSince(cursor);
      for (const entry of page.entries) writeSync(file, `${JSON.stringify(entry)}\n`);
      count += page.entries.length;
      cursor = page.cursor;
      if (cursor >= page.last) break;
    }
    fsyncSync(file);
  } finally {
    closeSync(file);
    await copy.close();
  }
  return count;
}
