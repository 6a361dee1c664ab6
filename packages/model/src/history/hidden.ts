import type { Entry } from './entry.ts';

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
