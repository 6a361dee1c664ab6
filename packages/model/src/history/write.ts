import { type Change, type Entry, HISTORY_SCHEMA, type Subject } from './entry.ts';
import type { History } from './history.ts';
import { redoTarget, undoTarget } from './undo.ts';

/** An entry before its device has numbered it. */
export type EntryDraft = Omit<Entry, 'id' | 'device' | 'seq' | 'clock' | 'at'>;

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

/** Hides the device's own last entry; undefined where there is none. */
export function undoEntry(history: History, device: string, subject?: Subject): EntryDraft | undefined {
  return hiding(undoTarget(history, device, subject));
}

/** Takes back the device's own last undo; undefined where there is none or something new was written since. */
export function redoEntry(history: History, device: string, subject?: Subject): EntryDraft | undefined {
  return hiding(redoTarget(history, device, subject));
}

function hiding(target: Entry | undefined): EntryDraft | undefined {
  if (!target) return undefined;
  return { subject: target.subject, what: 'undo', schema: HISTORY_SCHEMA, body: {}, undoes: target.id };
}

/** Numbers a draft on its device. @param stamp a fresh id and the instant of writing */
export function stampEntry(
  device: Device,
  draft: EntryDraft,
  stamp: { readonly id: string; readonly at: string },
): { readonly entry: Entry; readonly device: Device } {
  const seq = device.seq + 1;
  const clock = device.clock + 1;
  return {
    entry: { id: stamp.id, device: device.id, seq, clock, at: stamp.at, ...draft },
    device: { ...device, seq, clock },
  };
}

/** The device after it has seen entries of others: its next clock is greater than theirs. */
export function afterSeeing(device: Device, entries: readonly Entry[]): Device {
  const clock = entries.reduce((greatest, entry) => Math.max(greatest, entry.clock), device.clock);
  return clock === device.clock ? device : { ...device, clock };
}
