/** Runs inside the page: the browser's store, kept in step with the server that served the page. */
import { createEntry, type Subject, setEntry } from '@pitwright/model';
import { httpPeer, openJournal, type SyncState, startSync } from '@pitwright/store';
import { openBrowserStore } from '@pitwright/store/browser';

const cook: Subject = { kind: 'cook', id: 'harvest' };
async function begin() {
  const journal = await openJournal(await openBrowserStore());
  let state: SyncState | undefined;
  const sync = startSync(journal.store, httpPeer(location.origin), (next) => {
    state = next;
  });
  return {
    state: () => state,
    tryNow: () => sync.tryNow(),
    create: () => journal.write(createEntry(cook, { id: 'harvest', name: 'Harvest' })).then(() => undefined),
    rename: (name: string) =>
      journal.write(setEntry(cook, [{ path: ['name'], value: name }])).then(() => undefined),
    undo: () => journal.undo(cook).then(() => undefined),
    name: () => journal.state.cooks.get('harvest')?.document.name,
    ids: () => [...journal.history.entries.keys()].sort(),
  };
}

export type OnPage = Awaited<ReturnType<typeof begin>>;
void begin().then((onPage) => Object.assign(window, { onPage }));
