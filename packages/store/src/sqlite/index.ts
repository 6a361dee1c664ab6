export { openSqliteStore, type SqliteStore } from './store.ts';
