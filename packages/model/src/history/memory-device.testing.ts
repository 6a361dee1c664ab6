import type { Entry } from './entry.ts';
import { emptyHistory, extendHistory, type History } from './history.ts';
import { afterSeeing, type Device, type EntryDraft, stampEntry } from './write.ts';

/** A device held in memory, for tests of the rules: it writes, undoes and takes in what others wrote. */
export class MemoryDevice {
  history: History = emptyHistory;
  #device: Device;

  constructor(id: string) {
    this.#device = { id, seq: 0, clock: 0 };
  }

  get id(): string {
    return this.#device.id;
  }

  get entries(): readonly Entry[] {
    return [...this.history.entries.values()];
  }

  /** One deed, of one entry or several. @returns its first entry */
  write(...drafts: readonly EntryDraft[]): Entry | undefined {
    const act = drafts.length > 1 ? { act: `${this.id}-act-${this.#device.seq + 1}` } : {};
    return drafts.map((draft) => this.#stamp(draft, act))[0];
  }

  #stamp(draft: EntryDraft, act: { readonly act?: string }): Entry {
    const number = this.#device.seq + 1;
    const at = new Date(Date.UTC(2027, 8, 11, 6, 0, number)).toISOString();
    const { entry, device } = stampEntry(this.#device, draft, {
      id: `${this.id}-${number}`,
      at,
      ...act,
    });
    this.#device = device;
    this.history = extendHistory(this.history, [entry]);
    return entry;
  }

  receive(entries: readonly Entry[]): void {
    this.#device = afterSeeing(this.#device, entries);
    this.history = extendHistory(this.history, entries);
  }
}
