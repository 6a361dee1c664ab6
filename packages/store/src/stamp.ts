import { type Device, type Entry, type EntryDraft, stampEntry } from '@pitwright/model';
import { StoreFault } from './fault.ts';

/** Largest entry that is kept and exchanged [UTF-16 code units of its JSON]. */
export const ENTRY_SIZE_MAX = 500_000;

/** A fresh id: 128 random bits as 32 hexadecimal digits. Needs no secure context, unlike `randomUUID`. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** Numbers drafts on a device. @throws StoreFault on an entry that is too large; RangeError on a number that JSON cannot carry */
export function stampAll(
  device: Device,
  drafts: readonly EntryDraft[],
  at: string,
): { readonly entries: readonly Entry[]; readonly device: Device } {
  const entries: Entry[] = [];
  let standing = device;
  // What is written in one go is one deed, and undone as one.
  const act = drafts.length > 1 ? { act: newId() } : {};
  for (const draft of drafts) {
    const stamped = stampEntry(standing, draft, { id: newId(), at, ...act });
    standing = stamped.device;
    // What is kept is what JSON carries, so that every device reduces the same body.
    entries.push(JSON.parse(entryJson(stamped.entry)));
  }
  return { entries, device: standing };
}

/** The one text form of an entry. */
export function entryJson(entry: Entry): string {
  const json = JSON.stringify(entry, (key, value) => {
    if (typeof value === 'number' && !Number.isFinite(value))
      throw new RangeError(`${key} of an entry must be a finite number, got ${value}`);
    return value;
  });
  if (json.length > ENTRY_SIZE_MAX)
    throw new StoreFault({
      id: 'store.entry-too-large',
      params: { size: json.length, sizeMax: ENTRY_SIZE_MAX },
    });
  return json;
}
