import { type Entry, redoTarget, type Subject, undoTarget } from '@pitwright/model';
import { type Journal, openJournal } from '@pitwright/store';
import { openBrowserStore } from '@pitwright/store/browser';

/** Opens what this device keeps. Throws a `StoreFault` where the browser keeps nothing. */
export const openKeeping = async (): Promise<Journal> => openJournal(await openBrowserStore());

export const lastDone = (journal: Journal): Entry | undefined =>
  undoTarget(journal.history, journal.store.device);

export const canUndo = (journal: Journal, subject?: Subject): boolean =>
  undoTarget(journal.history, journal.store.device, subject) !== undefined;

export const canRedo = (journal: Journal, subject?: Subject): boolean =>
  redoTarget(journal.history, journal.store.device, subject) !== undefined;
