export { StoreFault } from './fault.ts';
export { type Journal, openJournal, readHistory } from './journal.ts';
export { ENTRY_SIZE_MAX, newId } from './stamp.ts';
export type { Page, PeerPosition, Store } from './store.ts';
