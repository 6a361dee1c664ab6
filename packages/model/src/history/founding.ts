import { type Entry, HISTORY_SCHEMA, type Subject } from './entry.ts';

/** Device of entries that no person wrote. */
const FOUNDING_DEVICE = 'founding';

/**
 * The entry that lays down a given document, such as the demo: the same wherever it is made, so that stores which each
 * laid it down hold it once after they meet. Another content is another entry; the first one then stands.
 *
 * @param at the instant shown as its creation, the same everywhere
 */
export function foundingEntry(subject: Subject, document: unknown, at: string): Entry {
  const text = JSON.stringify([subject, document]);
  return {
    id: `${FOUNDING_DEVICE}-${subject.id}-${fingerprint(text)}`,
    device: FOUNDING_DEVICE,
    seq: 1,
    clock: 1,
    at,
    subject,
    what: 'create',
    schema: HISTORY_SCHEMA,
    body: { document },
  };
}

/** Two 32-bit FNV-1a hashes over the code units, forwards and backwards, as 16 hexadecimal digits. @source Fowler, Noll and Vo, FNV-1a */
function fingerprint(text: string): string {
  const hash = (units: Iterable<string>) => {
    let state = 0x811c9dc5;
    for (const unit of units) state = Math.imul(state ^ unit.charCodeAt(0), 0x01000193);
    return (state >>> 0).toString(16).padStart(8, '0');
  };
  const units = text.split('');
  return hash(units) + hash(units.toReversed());
}
