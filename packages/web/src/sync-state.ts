import type { SyncState } from '@pitwright/store';

let state: SyncState | undefined;
const watchers = new Set<() => void>();

/** How far what is kept here is in step with the server; undefined until it was first tried. */
export const syncState = (): SyncState | undefined => state;

export function onSyncState(act: () => void): () => void {
  watchers.add(act);
  return () => watchers.delete(act);
}

export function tellSyncState(next: SyncState): void {
  // Between two states nothing is news yet.
  if (next.phase === 'exchanging' && state) return;
  state = next;
  for (const act of watchers) act();
}
