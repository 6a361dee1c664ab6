export { StoreFault } from './fault.ts';
export { type Journal, openJournal, readHistory } from './journal.ts';
export { newId } from './stamp.ts';
export type { Page, PeerPosition, Store } from './store.ts';
export { exchange } from './sync/exchange.ts';
export { httpPeer } from './sync/http-peer.ts';
export { type Peer, PeerFault, type PeerPage } from './sync/peer.ts';
export { type Sync, type SyncState, startSync } from './sync/sync.ts';
