import { afterSeeing, type Device, type Entry, type EntryDraft } from '@pitwright/model';
import { sql, type Transaction } from 'kysely';
import { entryJson, newId, stampAll } from '../stamp.ts';
import { PAGE_LIMIT, type Page, type PeerPosition, type Store } from '../store.ts';
import { Watchers } from '../watchers.ts';
import { type FileOptions, openSqliteFile, type SqliteFile, sqliteFault } from './driver.ts';
import { getMeta, migrate, setMeta, type Tables } from './schema.ts';

export interface SqliteStore extends Store {
  /**
   * Writes a consistent copy of all entries, with an identity of its own, also while others write.
   * @throws StoreFault; an error of SQLite where the file is there already
   */
  copyTo(path: string): Promise<void>;
}

/** Opens the store in a database file, made or brought to the present version if need be. @throws StoreFault */
export async function openSqliteStore(
  path: string,
  options: FileOptions & { readonly now?: () => Date } = {},
): Promise<SqliteStore> {
  return storeIn(openSqliteFile(path, options), options.now);
}

/** The store in an opened file. */
export async function storeIn(file: SqliteFile, now = () => new Date()): Promise<SqliteStore> {
  const { queries, path } = file;
  const watchers = new Watchers();

  const answering = async <T>(act: () => Promise<T>): Promise<T> => {
    try {
      return await act();
    } catch (cause) {
      throw sqliteFault(path, cause);
    }
  };
  const inTransaction = <T>(act: (trx: Transaction<Tables>) => Promise<T>): Promise<T> =>
    answering(() => queries.transaction().execute(act));

  const insert = async (trx: Transaction<Tables>, entry: Entry, forward: boolean): Promise<boolean> => {
    const row = await trx
      .insertInto('entry')
      .values({ id: entry.id, json: entryJson(entry) })
      .onConflict((conflict) => conflict.column('id').doNothing())
      .returning('arrival')
      .executeTakeFirst();
    if (row && forward) await trx.insertInto('outbox').values({ arrival: row.arrival }).execute();
    return row !== undefined;
  };

  await answering(() => migrate(queries, path));
  const { storeId, device } = await inTransaction(async (trx) => {
    const held = await getMeta(trx, 'store-id');
    const storeId = held ?? newId();
    const device = await readDevice(trx);
    if (held === undefined) {
      await setMeta(trx, 'store-id', storeId);
      await setMeta(trx, 'device', JSON.stringify(device));
    }
    return { storeId, device: device.id };
  });

  return {
    storeId,
    device,

    async write(drafts: readonly EntryDraft[]) {
      const entries = await inTransaction(async (trx) => {
        const stamped = stampAll(await readDevice(trx), drafts, now().toISOString());
        for (const entry of stamped.entries) await insert(trx, entry, true);
        await setMeta(trx, 'device', JSON.stringify(stamped.device));
        return stamped.entries;
      });
      if (entries.length > 0) watchers.call();
      return entries;
    },

    async receive(arrived, { forward = false } = {}) {
      const fresh = await inTransaction(async (trx) => {
        const kept: Entry[] = [];
        for (const entry of arrived) if (await insert(trx, entry, forward)) kept.push(entry);
        await setMeta(trx, 'device', JSON.stringify(afterSeeing(await readDevice(trx), kept)));
        return kept;
      });
      if (fresh.length > 0) watchers.call();
      return fresh;
    },

    readSince(cursor, limit = PAGE_LIMIT): Promise<Page> {
      return answering(async () => {
        const rows = await queries
          .selectFrom('entry')
          .select(['arrival', 'json'])
          .where('arrival', '>', cursor)
          .orderBy('arrival')
          .limit(limit)
          .execute();
        const last = await queries
          .selectFrom('entry')
          .select(({ fn }) => fn.max('arrival').as('last'))
          .executeTakeFirst();
        return {
          entries: rows.map((row): Entry => JSON.parse(row.json)),
          cursor: rows.at(-1)?.arrival ?? cursor,
          last: last?.last ?? 0,
        };
      });
    },

    outbox(limit = PAGE_LIMIT) {
      return answering(async () => {
        const rows = await queries
          .selectFrom('outbox')
          .innerJoin('entry', 'entry.arrival', 'outbox.arrival')
          .select('entry.json')
          .orderBy('outbox.arrival')
          .limit(limit)
          .execute();
        return rows.map((row): Entry => JSON.parse(row.json));
      });
    },

    async markSent(ids) {
      await inTransaction(async (trx) => {
        for (const id of ids)
          await trx
            .deleteFrom('outbox')
            .where('arrival', 'in', trx.selectFrom('entry').select('arrival').where('id', '=', id))
            .execute();
      });
    },

    peer() {
      return answering(async () => {
        const value = await getMeta(queries, 'peer');
        return value === undefined ? undefined : (JSON.parse(value) as PeerPosition);
      });
    },

    async setPeer(position) {
      await inTransaction((trx) => setMeta(trx, 'peer', JSON.stringify(position)));
    },

    async sendAllAgain() {
      await inTransaction(async (trx) => {
        await trx.deleteFrom('outbox').execute();
        await trx
          .insertInto('outbox')
          .columns(['arrival'])
          .expression(trx.selectFrom('entry').select('arrival'))
          .execute();
      });
    },

    watch: (listener) => watchers.add(listener),

    async copyTo(target) {
      await answering(() => sql`VACUUM INTO ${target}`.execute(queries));
      await becomeAnother(target);
    },

    async close() {
      await queries.destroy();
    },
  };
}

/**
 * Gives a copy an identity of its own. Put in the place of the original one day, it lacks what came since: as another
 * store it is sent everything again, and its device does not use numbers twice.
 */
async function becomeAnother(path: string): Promise<void> {
  const copy = openSqliteFile(path, { isAlone: true });
  await copy.queries.transaction().execute(async (trx) => {
    await setMeta(trx, 'store-id', newId());
    await setMeta(trx, 'device', JSON.stringify({ ...(await readDevice(trx)), id: newId(), seq: 0 }));
  });
  await copy.queries.destroy();
}

async function readDevice(trx: Transaction<Tables>): Promise<Device> {
  const held = await getMeta(trx, 'device');
  return held === undefined ? { id: newId(), seq: 0, clock: 0 } : JSON.parse(held);
}
