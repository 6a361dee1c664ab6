import { type Change, type Entry, HISTORY_SCHEMA, type Subject } from './entry.ts';
import type { History } from './history.ts';
import { actOf, redoTarget, undoTarget } from './undo.ts';

/** An entry before its device has numbered it. */
export type EntryDraft = Omit<Entry, 'id' | 'device' | 'seq' | 'clock' | 'at' | 'act'>;

/** Where a device stands: its last number and the greatest clock it has seen. */
export interface Device {
  readonly id: string;
  readonly seq: number;
  readonly clock: number;
}

/** The document comes into being. */
export function createEntry(subject: Subject, document: unknown): EntryDraft {
  return { subject, what: 'create', schema: HISTORY_SCHEMA, body: { document } };
}

/** One action of a person, however many fields it moves: it is undone as one. */
export function setEntry(subject: Subject, changes: readonly Change[]): EntryDraft {
  return { subject, what: 'set', schema: HISTORY_SCHEMA, body: { changes } };
}

export function removeEntry(subject: Subject): EntryDraft {
  return { subject, what: 'remove', schema: HISTORY_SCHEMA, body: {} };
}

export function bringBackEntry(subject: Subject): EntryDraft {
  return { subject, what: 'bring-back', schema: HISTORY_SCHEMA, body: {} };
}

/** Something that really happened at the pit. `kind` without `log.`; its body is the log's own matter. */
export function logEntry(
  cookId: string,
  kind: string,
  body: unknown,
  {
    schema = 1,
    happenedAt,
    by,
  }: { readonly schema?: number; readonly happenedAt?: string; readonly by?: string } = {},
): EntryDraft {
  return {
    subject: { kind: 'cook', id: cookId },
    what: `log.${kind}`,
    schema,
    body,
    ...(happenedAt === undefined ? {} : { happenedAt }),
    ...(by === undefined ? {} : { by }),
  };
}

/** Hides the device's own last deed, an entry each; none where there is none. */
export function undoEntries(history: History, device: string, subject?: Subject): readonly EntryDraft[] {
  return hiding(history, undoTarget(history, device, subject));
}

/** Takes back the device's own last undo; none where there is none or something new was written since. */
export function redoEntries(history: History, device: string, subject?: Subject): readonly EntryDraft[] {
  return hiding(history, redoTarget(history, device, subject));
}

const hiding = (history: History, target: Entry | undefined): readonly EntryDraft[] =>
  (target ? actOf(history, target) : []).map(({ id, subject }) => ({
    subject,
    what: 'undo',
    schema: HISTORY_SCHEMA,
    body: {},
    undoes: id,
  }));

/** Numbers a draft on its device. @param stamp a fresh id, the instant of writing, and the deed it is one entry of */
export function stampEntry(
  device: Device,
  draft: EntryDraft,
  stamp: { readonly id: string; readonly at: string; readonly act?: string },
): { readonly entry: Entry; readonly device: Device } {
  const seq = device.seq + 1;
  const clock = device.clock + 1;
  return {
    entry: { device: device.id, seq, clock, ...stamp, ...draft },
    device: { ...device, seq, clock },
  };
}

/** The device after it has seen entries of others: its next clock is greater than theirs. */
export function afterSeeing(device: Device, entries: readonly Entry[]): Device {
  const clock = entries.reduce((greatest, entry) => Math.max(greatest, entry.clock), device.clock);
  return clock === device.clock ? device : { ...device, clock };
}
