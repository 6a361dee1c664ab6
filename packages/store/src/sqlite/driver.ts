/** The one module that knows which SQLite is used (docs/decisions/store-driver.md). */

import { type Driver, Kysely, SqliteDialect, SqliteDriver } from 'kysely';
import Database from 'libsql';
import { StoreFault } from '../fault.ts';
import type { Tables } from './schema.ts';

export interface SqliteFile {
  readonly path: string;
  readonly queries: Kysely<Tables>;
  /** Runs a pragma. */
  run(statement: string): unknown[];
}

export interface FileOptions {
  /** How long a statement waits for another process that is writing. */
  readonly waitMs?: number;
  /** Nobody else has this file open, as with a copy just made: no log is kept beside it. */
  readonly isAlone?: boolean;
}

/**
 * Opens a database file, made if missing: write-ahead log, every commit flushed to the disk.
 * @throws StoreFault locked, damaged, or a disk that does not answer
 */
export function openSqliteFile(
  path: string,
  { waitMs = 5000, isAlone = false }: FileOptions = {},
): SqliteFile {
  return answering(path, () => {
    const database = openDatabase(path);
    const run = (statement: string): unknown[] => {
      const prepared = database.prepare(statement);
      return prepared.reader ? prepared.all() : [prepared.run()];
    };
    try {
      run(`PRAGMA busy_timeout = ${Math.trunc(waitMs)}`);
      run(`PRAGMA journal_mode = ${isAlone ? 'DELETE' : 'WAL'}`);
      run('PRAGMA synchronous = FULL');
      const [check] = run('PRAGMA quick_check(1)') as { quick_check: string }[];
      if (check?.quick_check !== 'ok')
        throw new StoreFault({ id: 'store.damaged', params: { path } }, check?.quick_check);
    } catch (cause) {
      database.close();
      throw cause;
    }
    return {
      path,
      queries: new Kysely<Tables>({ dialect: new WritingDialect(database) }),
      run: (statement) => answering(path, () => run(statement)),
    };
  });
}

/**
 * Transactions that take the write lock at their start, so that two processes wait for each other instead of failing.
 * `exec` lets go of its statement at once; a prepared one that met a lock would stay in progress and bar the next commit.
 */
class WritingDialect extends SqliteDialect {
  readonly #database: Database.Database;

  constructor(database: Database.Database) {
    super({ database });
    this.#database = database;
  }

  override createDriver(): Driver {
    const database = this.#database;
    const driver = new SqliteDriver({ database });
    return Object.assign(driver, {
      beginTransaction: async () => void database.exec('BEGIN IMMEDIATE'),
      commitTransaction: async () => void database.exec('COMMIT'),
      // After a full or failing disk SQLite has rolled back by itself.
      rollbackTransaction: async () => void (database.inTransaction && database.exec('ROLLBACK')),
      destroy: async () => close(database),
    });
  }
}

/** Brings the log home into the main file before closing: prepared statements keep the connection open until collected. */
function close(database: Database.Database): void {
  try {
    database.prepare('PRAGMA wal_checkpoint(TRUNCATE)').all();
  } finally {
    database.close();
  }
}

function openDatabase(path: string): Database.Database {
  try {
    return new Database(path);
  } catch (cause) {
    // The driver tells no code here; whatever it is, the file cannot be opened.
    throw new StoreFault({ id: 'store.not-writable', params: { path } }, cause);
  }
}

function answering<T>(path: string, act: () => T): T {
  try {
    return act();
  } catch (cause) {
    throw sqliteFault(path, cause);
  }
}

/** What SQLite's error means to a person; anything else is passed through. */
export function sqliteFault(path: string, cause: unknown): unknown {
  const code = typeof cause === 'object' && cause !== null && 'code' in cause ? String(cause.code) : '';
  const say = (id: string) => new StoreFault({ id, params: { path } }, cause);
  if (code.startsWith('SQLITE_BUSY') || code.startsWith('SQLITE_LOCKED')) return say('store.locked');
  if (code.startsWith('SQLITE_CORRUPT') || code === 'SQLITE_NOTADB') return say('store.damaged');
  if (code === 'SQLITE_FULL') return say('store.disk-full');
  if (code.startsWith('SQLITE_IOERR')) return say('store.disk-refuses');
  if (code.startsWith('SQLITE_READONLY') || code.startsWith('SQLITE_CANTOPEN') || code === 'SQLITE_PERM')
    return say('store.not-writable');
  return cause;
}
