import type { Entry, EntryDraft } from '@pitwright/model';
import { type Journal, newId } from '@pitwright/store';

/**
 * A page that is closed takes an unfinished write with it, and IndexedDB gives it no time to end one. What is being
 * written is therefore noted at once where writing is done before the call returns, and the note goes when the write
 * has ended. A note that is found when the app opens is of a page that was closed too early.
 */
const PREFIX = 'pitwright.unwritten.';

interface Note {
  /** When it was noted, UTC instant. */
  readonly at: string;
  readonly drafts: readonly EntryDraft[];
}

/** This page's own: two tabs leave each other's alone. */
const key = PREFIX + newId();
const unwritten = new Set<Note>();

function noteAll(): void {
  try {
    if (unwritten.size === 0) localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify([...unwritten]));
  } catch {
    // Without room for a note the write goes on all the same.
  }
}

/** Notes what is being written until the write has ended, well or not. */
export async function noted<T>(drafts: readonly EntryDraft[], write: () => Promise<T>): Promise<T> {
  const note = { at: new Date().toISOString(), drafts };
  unwritten.add(note);
  noteAll();
  try {
    return await write();
  } finally {
    unwritten.delete(note);
    noteAll();
  }
}

/** Writes what earlier pages were closed over. What had reached the disk after all is not written twice. */
export async function writeNoted(journal: Journal): Promise<void> {
  for (const left of Object.keys(localStorage).filter((one) => one.startsWith(PREFIX) && one !== key)) {
    for (const { at, drafts } of readNotes(localStorage.getItem(left)))
      if (!isWritten(journal, at, drafts)) await journal.write(...drafts);
    localStorage.removeItem(left);
  }
}

/** What one act wrote is on the disk as a whole or not at all: its first entry tells. */
function isWritten({ history, store }: Journal, at: string, [first]: readonly EntryDraft[]): boolean {
  const told = ({ subject, what, body }: Entry | EntryDraft) => JSON.stringify([subject, what, body]);
  return (
    !first ||
    [...history.entries.values()].some(
      (entry) => entry.device === store.device && entry.at >= at && told(entry) === told(first),
    )
  );
}

function readNotes(json: string | null): readonly Note[] {
  try {
    const notes: unknown = JSON.parse(json ?? '[]');
    return Array.isArray(notes) ? notes.filter((note) => Array.isArray(note?.drafts)) : [];
  } catch {
    return [];
  }
}
