import { compareEntries, type Entry, type Subject, subjectKey } from './entry.ts';
import { hiddenIds } from './hidden.ts';
import type { History } from './history.ts';

/** What undo would hide: the device's own last entry still in force, on `subject` or on anything. */
export function undoTarget(history: History, device: string, subject?: Subject): Entry | undefined {
  const { own, hidden } = ownEntries(history, device, subject);
  return own.findLast((entry) => entry.what !== 'undo' && !hidden.has(entry.id));
}

/** The undo that redo would hide: the last one in force, as long as nothing new was written after it. */
export function redoTarget(history: History, device: string, subject?: Subject): Entry | undefined {
  const { own, hidden } = ownEntries(history, device, subject);
  const lastChange = own.findLastIndex((entry) => entry.what !== 'undo');
  return own
    .slice(lastChange + 1)
    .findLast((entry) => !hidden.has(entry.id) && history.entries.get(entry.undoes ?? '')?.what !== 'undo');
}

/** What one undo of `target` hides: with the last of a deed all of it that is still in force, whatever it is about. */
export function actOf(history: History, target: Entry): readonly Entry[] {
  if (target.act === undefined) return [target];
  const { own, hidden } = ownEntries(history, target.device);
  return own.filter((entry) => entry.act === target.act && !hidden.has(entry.id));
}

function ownEntries(history: History, device: string, subject?: Subject) {
  const groups = subject
    ? [history.bySubject.get(subjectKey(subject)) ?? []]
    : [...history.bySubject.values()];
  return {
    own: groups
      .flat()
      .filter((entry) => entry.device === device)
      .sort(compareEntries),
    hidden: new Set(groups.flatMap((group) => [...hiddenIds(group)])),
  };
}
