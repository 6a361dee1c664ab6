import type { Store } from '../store.ts';
import { exchange, sendOutbox, takeIn } from './exchange.ts';
import { type Peer, PeerFault } from './peer.ts';

export interface SyncState {
  /** `in-step`: linked, all exchanged. `away`: nobody answers, it goes on here. `none`: there is no server at all. */
  readonly phase: 'exchanging' | 'in-step' | 'away' | 'none';
  /** Entries here that the peer has not acknowledged; counted up to 500. */
  readonly waiting: number;
  /** How many entries the peer did not take since this began. */
  readonly refused: number;
}

export interface Sync {
  readonly state: SyncState;
  /** Tries at once instead of waiting, as when the network is back. */
  tryNow(): void;
  stop(): Promise<void>;
}

const FIRST_REST_MS = 500;
const LONGEST_REST_MS = 30_000;
/** Where plain files are served there may be a server one day, but not soon. */
const REST_WITHOUT_SERVER_MS = 300_000;

/**
 * Keeps a store in step with a peer for as long as it runs: takes in what comes, sends what is written, and when the link
 * is gone tries again, each time later, up to half a minute.
 */
export function startSync(store: Store, peer: Peer, onState: (state: SyncState) => void = () => {}): Sync {
  const stopping = new AbortController();
  let state: SyncState = { phase: 'exchanging', waiting: 0, refused: 0 };
  let wake: () => void = () => {};

  const tell = async (phase: SyncState['phase'], refused: readonly string[] = []) => {
    const waiting = (await store.outbox()).length;
    const next = { phase, waiting, refused: state.refused + refused.length };
    const isNews = next.phase !== state.phase || waiting !== state.waiting || refused.length > 0;
    state = next;
    if (isNews && !stopping.signal.aborted) onState(state);
  };

  const send = async () => tell('in-step', (await sendOutbox(store, peer)).refused);

  const follow = async (signal: AbortSignal) => {
    const position = await store.peer();
    for await (const page of peer.follow(position?.cursor ?? 0, signal)) await takeIn(store, page);
    throw new PeerFault('away');
  };

  const stayInStep = async () => {
    const link = new AbortController();
    const signal = AbortSignal.any([link.signal, stopping.signal]);
    const writes = onEachWrite(store, signal);
    try {
      await Promise.race([follow(signal), writes(send)]);
    } finally {
      link.abort();
    }
  };

  const run = async () => {
    let restMs = FIRST_REST_MS;
    while (!stopping.signal.aborted) {
      try {
        await tell('in-step', await exchange(store, peer));
        restMs = FIRST_REST_MS;
        await stayInStep();
      } catch (cause) {
        if (stopping.signal.aborted) return;
        const isNone = cause instanceof PeerFault && cause.why === 'none';
        // A store that fails says so to the one who writes; here it only means trying again later.
        await tell(isNone ? 'none' : 'away').catch(() => undefined);
        if (isNone) restMs = REST_WITHOUT_SERVER_MS;
      }
      await new Promise<void>((resolve) => {
        wake = resolve;
        const timer = setTimeout(resolve, restMs);
        stopping.signal.addEventListener('abort', () => {
          clearTimeout(timer);
          resolve();
        });
      });
      restMs = Math.min(LONGEST_REST_MS, restMs * 2);
    }
  };

  const running = run();
  return {
    get state() {
      return state;
    },
    tryNow: () => wake(),
    async stop() {
      stopping.abort();
      await running;
    },
  };
}

/** Calls `act` after each write, one at a time, until the signal; rejects with what `act` throws. */
function onEachWrite(store: Store, signal: AbortSignal): (act: () => Promise<void>) => Promise<void> {
  let isNew = true;
  let ring: () => void = () => {};
  const endWatch = store.watch(() => {
    isNew = true;
    ring();
  });
  signal.addEventListener('abort', () => {
    endWatch();
    ring();
  });
  return async (act) => {
    while (!signal.aborted) {
      if (isNew) {
        isNew = false;
        await act();
      } else
        await new Promise<void>((resolve) => {
          ring = resolve;
        });
    }
  };
}
