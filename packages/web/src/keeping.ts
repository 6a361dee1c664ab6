import { type Entry, redoTarget, type Subject, undoTarget } from '@pitwright/model';
import { type Journal, openJournal } from '@pitwright/store';
import { openBrowserStore } from '@pitwright/store/browser';
import { writeNoted } from './unwritten.ts';

/** Opens what this device keeps. Throws a `StoreFault` where the browser keeps nothing. */
export async function openKeeping(): Promise<Journal> {
  const journal = await openJournal(await openBrowserStore());
  await writeNoted(journal);
  return journal;
}

export const lastDone = (journal: Journal): Entry | undefined =>
  undoTarget(journal.history, journal.store.device);

export const canUndo = (journal: Journal, subject?: Subject): boolean =>
  undoTarget(journal.history, journal.store.device, subject) !== undefined;

export const canRedo = (journal: Journal, subject?: Subject): boolean =>
  redoTarget(journal.history, journal.store.device, subject) !== undefined;
