import {
  type Entry,
  type EntryDraft,
  emptyHistory,
  extendHistory,
  type History,
  redoEntries,
  type State,
  type Subject,
  undoEntries,
} from '@pitwright/model';
import type { Store } from './store.ts';
import { Watchers } from './watchers.ts';

/** A store and what its entries amount to, kept up to date: also by other tabs and by the exchange with a server. */
export interface Journal {
  readonly store: Store;
  /** A new one after each change; what did not change keeps its identity. */
  readonly history: History;
  readonly state: State;
  /** Resolves when the entries are on the disk and in the state. @throws StoreFault */
  write(...drafts: readonly EntryDraft[]): Promise<readonly Entry[]>;
  /** Hides this device's last deed (on `subject`). @returns the undo, an entry for each it hides; none where there is nothing to undo */
  undo(subject?: Subject): Promise<readonly Entry[]>;
  redo(subject?: Subject): Promise<readonly Entry[]>;
  /** Calls back after each change of `history`. @returns the end of it */
  watch(listener: () => void): () => void;
  /** Ends the journal and its store. */
  close(): Promise<void>;
}

/** Reads the whole store into a journal. @throws StoreFault */
export async function openJournal(store: Store): Promise<Journal> {
  const watchers = new Watchers();
  let history = emptyHistory;
  let cursor = 0;
  let reading: Promise<void> = Promise.resolve();
  let isClosed = false;

  const catchUp = (): Promise<void> => {
    reading = reading
      .catch(() => undefined)
      .then(async () => {
        const before = history;
        const read = await readOn(store, history, cursor);
        ({ history, cursor } = read);
        if (history !== before) watchers.call();
      });
    return reading;
  };
  const endWatch = store.watch(() => {
    // A failed read is told to the next one who writes; the entries stay in the store.
    if (!isClosed) catchUp().catch(() => undefined);
  });
  await catchUp();

  // One deed after another: an undo looks at what the deed before it left behind.
  let doing: Promise<unknown> = Promise.resolve();
  const inTurn = <T>(deed: () => Promise<T>): Promise<T> => {
    const turn = doing.catch(() => undefined).then(deed);
    doing = turn;
    return turn;
  };
  const put = async (drafts: readonly EntryDraft[]) => {
    const entries = await store.write(drafts);
    await catchUp();
    return entries;
  };
  const putAny = async (drafts: readonly EntryDraft[]) => (drafts.length > 0 ? put(drafts) : []);
  return {
    store,
    get history() {
      return history;
    },
    get state() {
      return history.state;
    },
    write: (...drafts) => inTurn(() => put(drafts)),
    undo: (subject) => inTurn(() => putAny(undoEntries(history, store.device, subject))),
    redo: (subject) => inTurn(() => putAny(redoEntries(history, store.device, subject))),
    watch: (listener) => watchers.add(listener),
    async close() {
      isClosed = true;
      endWatch();
      await reading.catch(() => undefined);
      await store.close();
    },
  };
}

/** The history of everything in a store. @throws StoreFault */
export async function readHistory(store: Pick<Store, 'readSince'>): Promise<History> {
  return (await readOn(store, emptyHistory, 0)).history;
}

async function readOn(store: Pick<Store, 'readSince'>, history: History, cursor: number) {
  const entries: Entry[] = [];
  let at = cursor;
  for (;;) {
    const page = await store.readSince(at);
    entries.push(...page.entries);
    at = page.cursor;
    if (page.entries.length === 0 || page.cursor >= page.last) break;
  }
  return { history: extendHistory(history, entries), cursor: at };
}
