import type { Entry, EntryDraft } from '@pitwright/model';

/** A stretch of entries in the order in which this store came to hold them. */
export interface Page {
  readonly entries: readonly Entry[];
  /** Where to read on. */
  readonly cursor: number;
  /** Cursor of the last entry held; equal to `cursor` when there is no more. */
  readonly last: number;
}

/** How far the exchange with another store has come. */
export interface PeerPosition {
  /** Identity of the other store: another identity means starting over. */
  readonly storeId: string;
  /** Its cursor up to which its entries are here. */
  readonly cursor: number;
}

/**
 * What is kept: entries, each once, never changed. One interface over the browser's own database and SQLite.
 * Every promise that resolves has reached the disk; every refusal is a `StoreFault` and leaves what was stored as it was.
 */
export interface Store {
  /** Identity of this store, made when it was. */
  readonly storeId: string;
  /** The device that writes here. */
  readonly device: string;

  /** Numbers and keeps what this device writes, all of it or nothing. @returns the entries as kept */
  write(drafts: readonly EntryDraft[]): Promise<readonly Entry[]>;

  /**
   * Keeps entries of others; those already here are passed over.
   * @param forward whether they must still be sent on (entries from a file), or came from the peer itself
   * @returns those that were new
   */
  receive(entries: readonly Entry[], options?: { readonly forward?: boolean }): Promise<readonly Entry[]>;

  /** Entries that came after `cursor`, oldest first; 0 reads from the beginning. */
  readSince(cursor: number, limit?: number): Promise<Page>;

  /** Entries that the peer has not acknowledged, oldest first. */
  outbox(limit?: number): Promise<readonly Entry[]>;

  /** Takes acknowledged entries out of the outbox. */
  markSent(ids: readonly string[]): Promise<void>;

  peer(): Promise<PeerPosition | undefined>;

  /** Notes how far the exchange has come. */
  setPeer(position: PeerPosition): Promise<void>;

  /** Puts every entry into the outbox again, for a peer that does not hold what it once acknowledged. */
  sendAllAgain(): Promise<void>;

  /** Calls back after entries came to be held, written here, received, or by another tab. @returns the end of it */
  watch(listener: () => void): () => void;

  close(): Promise<void>;
}

export const PAGE_LIMIT = 500;
