/** What an entry is about. */
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
}
