/** What an entry is about. Kinds not named here are kept and not applied. */
export interface Subject {
  readonly kind: 'cook' | 'recipe' | 'pit' | 'setting';
  readonly id: string;
}

/**
 * One change, made on one device, never edited afterwards. State is the entries reduced in the order
 * (clock, device, seq). Log entries (`what` beginning `log.`) are the same mechanism.
 */
export interface Entry {
  readonly id: string;
  readonly device: string;
  /** Counts up by one on its device. */
  readonly seq: number;
  /** Lamport clock: greater than every clock this device had seen. */
  readonly clock: number;
  /** When it was written down, UTC instant. */
  readonly at: string;
  /** When it happened, where that is another moment. */
  readonly happenedAt?: string;
  readonly by?: string;
  readonly subject: Subject;
  /** `create`, `set`, `remove`, `bring-back`, `undo`, `log.<kind>` … */
  readonly what: string;
  /** Version of the body's form. */
  readonly schema: number;
  readonly body: unknown;
  /** Id of the entry that this one hides. */
  readonly undoes?: string;
  /** Id that the entries of one deed share, where it took several: they are undone as one. */
  readonly act?: string;
}

/** Version of the bodies of `create`, `set`, `remove`, `bring-back` and `undo`. */
export const HISTORY_SCHEMA = 1;

/**
 * Where in a document: through objects by key, through lists by the `id` of the thing in the list
 * (`['pieces', 'shoulder', 'bite']`). A list whose things have no id, such as stages, is one field.
 */
export type Path = readonly string[];

/** One step of a `set` entry, applied in turn. */
export type Change =
  /** The field, or the whole thing in a list, becomes `value`; a thing not yet in the list joins at its end. */
  | { readonly path: Path; readonly value: unknown }
  /** Without a value: the field is cleared, or the thing is taken out of its list. */
  | { readonly path: Path }
  /** A thing taken out of its list is back, with all that was set on it meanwhile. */
  | { readonly path: Path; readonly back: true }
  /** The things of a list stand in this order; those not named follow as they stood. */
  | { readonly path: Path; readonly order: readonly string[] };

/** Total order of entries: clock, then device, then seq; the id settles what a copied device left equal. */
export function compareEntries(a: Entry, b: Entry): number {
  return a.clock - b.clock || compareText(a.device, b.device) || a.seq - b.seq || compareText(a.id, b.id);
}

/** By code unit, never by a locale: every device must sort alike. */
function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** One key per subject. */
export function subjectKey(subject: Subject): string {
  return JSON.stringify([subject.kind, subject.id]);
}
