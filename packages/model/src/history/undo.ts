import { compareEntries, type Entry, type Subject } from './entry.ts';
import type { History } from './history.ts';

/**
 * Ids of the entries that undos hide, among the entries of one subject. An undo counts only where it names an
 * earlier entry of its own device; an undo that is itself hidden hides nothing, so undoing an undo is redoing.
 */
export function hiddenIds(entries: readonly Entry[]): ReadonlySet<string> {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const undos = entries.filter((entry) => entry.what === 'undo').sort((a, b) => b.seq - a.seq);
  const hidden = new Set<string>();
  for (const undo of undos) {
    const target = undo.undoes === undefined ? undefined : byId.get(undo.undoes);
    if (!target || target.device !== undo.device || !(target.seq < undo.seq)) continue;
    if (!hidden.has(undo.id)) hidden.add(target.id);
  }
  return hidden;
}

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

/** One key per subject. */
export function subjectKey(subject: Subject): string {
  return JSON.stringify([subject.kind, subject.id]);
}
