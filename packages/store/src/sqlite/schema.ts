import { type Generated, type Kysely, sql, type Transaction } from 'kysely';
import { StoreFault } from '../fault.ts';

export interface Tables {
  entry: {
    /** Order in which entries came to be held here: the cursor of readers. */
    arrival: Generated<number>;
    id: string;
    json: string;
  };
  /** Entries that the peer has not acknowledged. */
  outbox: { arrival: number };
  /** Identity of the store, state of its device, position of its peer, version of this schema. */
  meta: { key: string; value: string };
}

/** Each step leads from the version before to its own. A released step is never changed. */
const MIGRATIONS: readonly ((trx: Transaction<Tables>) => Promise<void>)[] = [
  async (trx) => {
    await trx.schema
      .createTable('entry')
      .addColumn('arrival', 'integer', (column) => column.primaryKey().autoIncrement())
      .addColumn('id', 'text', (column) => column.notNull().unique())
      .addColumn('json', 'text', (column) => column.notNull())
      .execute();
    await trx.schema
      .createTable('outbox')
      .addColumn('arrival', 'integer', (column) => column.primaryKey().references('entry.arrival'))
      .execute();
  },
];

export const SCHEMA_VERSION = MIGRATIONS.length;

/** Brings a database to the present version, all the way or not at all. @throws StoreFault on a newer one */
export async function migrate(queries: Kysely<Tables>, path: string): Promise<void> {
  await queries.transaction().execute(async (trx) => {
    await sql`CREATE TABLE IF NOT EXISTS meta (key TEXT PRIMARY KEY, value TEXT NOT NULL)`.execute(trx);
    const row = await trx.selectFrom('meta').select('value').where('key', '=', 'schema').executeTakeFirst();
    const version = Number(row?.value ?? 0);
    if (version > SCHEMA_VERSION)
      throw new StoreFault({ id: 'store.newer', params: { path, version, known: SCHEMA_VERSION } });
    for (const step of MIGRATIONS.slice(version)) await step(trx);
    // Nothing is written where nothing changes: a store on a full disk must still open.
    if (version < SCHEMA_VERSION) await setMeta(trx, 'schema', String(SCHEMA_VERSION));
  });
}

export async function setMeta(trx: Transaction<Tables>, key: string, value: string): Promise<void> {
  await trx
    .insertInto('meta')
    .values({ key, value })
    .onConflict((conflict) => conflict.column('key').doUpdateSet({ value }))
    .execute();
}

export async function getMeta(trx: Kysely<Tables>, key: string): Promise<string | undefined> {
  const row = await trx.selectFrom('meta').select('value').where('key', '=', key).executeTakeFirst();
  return row?.value;
}
