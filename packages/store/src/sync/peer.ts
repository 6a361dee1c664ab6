import type { Entry } from '@pitwright/model';
import type { Page } from '../store.ts';

export interface PeerPage extends Page {
  readonly storeId: string;
}

/** The store on the other side of a link that may be poor or gone. Every call may throw a `PeerFault`. */
export interface Peer {
  read(since: number): Promise<PeerPage>;
  /** Resolves when all of them are on the other side's disk. */
  send(entries: readonly Entry[]): Promise<void>;
  /** Pages as they come, until the link ends. */
  follow(since: number, signal: AbortSignal): AsyncIterable<PeerPage>;
}

/**
 * Why an exchange did not come about: nobody answers (`away`), what answers is no store, as on a host of plain files
 * (`none`), or the other side does not take these entries (`refused`).
 */
export class PeerFault extends Error {
  readonly why: 'away' | 'none' | 'refused';

  constructor(why: PeerFault['why'], cause?: unknown) {
    super(`the other store: ${why}`, { cause });
    this.name = 'PeerFault';
    this.why = why;
  }
}
