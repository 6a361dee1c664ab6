import { afterSeeing, type Device, type Entry } from '@pitwright/model';
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { StoreFault } from '../fault.ts';
import { entryJson, newId, stampAll } from '../stamp.ts';
import { PAGE_LIMIT, type PeerPosition, type Store } from '../store.ts';
import { Watchers } from '../watchers.ts';

interface Tables extends DBSchema {
  entries: { key: number; value: { arrival?: number; entry: Entry }; indexes: { id: string } };
  /** Arrivals of entries that the peer has not acknowledged, with their ids. */
  outbox: { key: number; value: string; indexes: never };
  meta: { key: 'store-id' | 'device' | 'peer'; value: string | Device | PeerPosition };
}

const VERSION = 1;
/** Asks the browser to flush to the disk before it acknowledges. */
const DURABLY = { durability: 'strict' } as const;

/** Opens the browser's own store (IndexedDB), made if missing. @throws StoreFault */
export async function openBrowserStore(
  name = 'pitwright',
  { now = () => new Date() }: { readonly now?: () => Date } = {},
): Promise<Store> {
  const database = await answering(() => openDatabase(name));
  const watchers = new Watchers();
  const otherTabs = new BroadcastChannel(`pitwright-store:${name}`);
  otherTabs.onmessage = () => watchers.call();
  const tellOfNew = () => {
    watchers.call();
    otherTabs.postMessage('entries');
  };

  const { storeId, device } = await answering(() => identityOf(database));

  return {
    storeId,
    device,

    async write(drafts) {
      const entries = await answering(async () => {
        const trx = database.transaction(['entries', 'outbox', 'meta'], 'readwrite', DURABLY);
        return all(trx, async () => {
          const standing = (await trx.objectStore('meta').get('device')) as Device;
          const stamped = stampAll(standing, drafts, now().toISOString());
          for (const entry of stamped.entries) {
            const arrival = await trx.objectStore('entries').add({ entry });
            await trx.objectStore('outbox').put(entry.id, arrival);
          }
          await trx.objectStore('meta').put(stamped.device, 'device');
          return stamped.entries;
        });
      });
      if (entries.length > 0) tellOfNew();
      return entries;
    },

    async receive(arrived, { forward = false } = {}) {
      const fresh = await answering(async () => {
        const trx = database.transaction(['entries', 'outbox', 'meta'], 'readwrite', DURABLY);
        return all(trx, async () => {
          const kept: Entry[] = [];
          for (const entry of arrived) {
            entryJson(entry);
            if ((await trx.objectStore('entries').index('id').getKey(entry.id)) !== undefined) continue;
            const arrival = await trx.objectStore('entries').add({ entry });
            if (forward) await trx.objectStore('outbox').put(entry.id, arrival);
            kept.push(entry);
          }
          const standing = (await trx.objectStore('meta').get('device')) as Device;
          await trx.objectStore('meta').put(afterSeeing(standing, kept), 'device');
          return kept;
        });
      });
      if (fresh.length > 0) tellOfNew();
      return fresh;
    },

    readSince(cursor, limit = PAGE_LIMIT) {
      return answering(async () => {
        const trx = database.transaction('entries');
        const rows = await trx.store.getAll(IDBKeyRange.lowerBound(cursor, true), limit);
        const newest = await trx.store.openKeyCursor(null, 'prev');
        return {
          entries: rows.map((row) => row.entry),
          cursor: rows.at(-1)?.arrival ?? cursor,
          last: newest?.key ?? 0,
        };
      });
    },

    outbox(limit = PAGE_LIMIT) {
      return answering(async () => {
        const trx = database.transaction(['entries', 'outbox']);
        const arrivals = await trx.objectStore('outbox').getAllKeys(null, limit);
        const rows = await Promise.all(arrivals.map((arrival) => trx.objectStore('entries').get(arrival)));
        return rows.flatMap((row) => (row ? [row.entry] : []));
      });
    },

    async markSent(ids) {
      await answering(async () => {
        const trx = database.transaction(['entries', 'outbox'], 'readwrite', DURABLY);
        await all(trx, async () => {
          for (const id of ids) {
            const arrival = await trx.objectStore('entries').index('id').getKey(id);
            if (arrival !== undefined) await trx.objectStore('outbox').delete(arrival);
          }
        });
      });
    },

    peer() {
      return answering(async () => (await database.get('meta', 'peer')) as PeerPosition | undefined);
    },

    async setPeer(position) {
      await answering(async () => {
        const trx = database.transaction('meta', 'readwrite', DURABLY);
        await trx.store.put(position, 'peer');
        await trx.done;
      });
    },

    async sendAllAgain() {
      await answering(async () => {
        const trx = database.transaction(['entries', 'outbox'], 'readwrite', DURABLY);
        await all(trx, async () => {
          await trx.objectStore('outbox').clear();
          for (const { arrival, entry } of await trx.objectStore('entries').getAll())
            await trx.objectStore('outbox').put(entry.id, arrival);
        });
      });
    },

    watch: (listener) => watchers.add(listener),

    async close() {
      otherTabs.close();
      database.close();
    },
  };
}

/** Written only when it is made: a store without room must still open. */
async function identityOf(
  database: IDBPDatabase<Tables>,
): Promise<{ readonly storeId: string; readonly device: string }> {
  const held = await database.get('meta', 'store-id');
  const standing = (await database.get('meta', 'device')) as Device | undefined;
  if (typeof held === 'string' && standing) return { storeId: held, device: standing.id };
  const trx = database.transaction('meta', 'readwrite', DURABLY);
  // Another tab may have been first.
  const storeId = ((await trx.store.get('store-id')) as string | undefined) ?? newId();
  const device = ((await trx.store.get('device')) as Device | undefined) ?? { id: newId(), seq: 0, clock: 0 };
  await trx.store.put(storeId, 'store-id');
  await trx.store.put(device, 'device');
  await trx.done;
  return { storeId, device: device.id };
}

async function openDatabase(name: string): Promise<IDBPDatabase<Tables>> {
  const database = await openDB<Tables>(name, VERSION, {
    upgrade(fresh) {
      const entries = fresh.createObjectStore('entries', { keyPath: 'arrival', autoIncrement: true });
      entries.createIndex('id', 'entry.id', { unique: true });
      fresh.createObjectStore('outbox');
      fresh.createObjectStore('meta');
    },
    // A newer version of the app in another tab must not wait for this one.
    blocking: () => database.close(),
  });
  return database;
}

/** All of a transaction or nothing of it. */
async function all<T>(
  trx: { readonly done: Promise<void>; abort(): void },
  act: () => Promise<T>,
): Promise<T> {
  // An abort is told by the error that caused it; the transaction's own promise must not go unheard meanwhile.
  const done = trx.done.catch((cause: unknown) => {
    throw cause;
  });
  done.catch(() => undefined);
  let result: T;
  try {
    result = await act();
  } catch (cause) {
    try {
      trx.abort();
    } catch {
      // It had ended by itself.
    }
    throw cause;
  }
  await done;
  return result;
}

async function answering<T>(act: () => Promise<T>): Promise<T> {
  try {
    return await act();
  } catch (cause) {
    throw browserFault(cause);
  }
}

/** What the browser's error means to a person; anything else is passed through. */
function browserFault(cause: unknown): unknown {
  const name = cause instanceof DOMException ? cause.name : '';
  if (name === 'QuotaExceededError') return new StoreFault({ id: 'store.quota' }, cause);
  if (name === 'VersionError') return new StoreFault({ id: 'store.newer-tab' }, cause);
  if (name === 'SecurityError') return new StoreFault({ id: 'store.no-site-data' }, cause);
  if (name === 'InvalidStateError') return new StoreFault({ id: 'store.closed' }, cause);
  if (name === 'UnknownError' || name === 'DataError')
    return new StoreFault({ id: 'store.browser-failed' }, cause);
  return cause;
}
