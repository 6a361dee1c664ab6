import { useRef } from 'react';
import { useLeaving } from './leaving.ts';

/** Keys pressed within this time of each other are one change, undone as one. */
const PAUSE_MS = 700;

export interface Pause {
  /** Waits with `act` until no other came for a while; who leaves meanwhile has meant what stands there. */
  readonly before: (act: () => void) => void;
  readonly isWaiting: () => boolean;
}

export function usePause(): Pause {
  const waiting = useRef<{ readonly act: () => void; readonly timer: ReturnType<typeof setTimeout> }>(
    undefined,
  );
  const end = () => {
    const ended = waiting.current;
    waiting.current = undefined;
    clearTimeout(ended?.timer);
    ended?.act();
  };
  useLeaving(end);
  return {
    before: (act) => {
      clearTimeout(waiting.current?.timer);
      waiting.current = { act, timer: setTimeout(end, PAUSE_MS) };
    },
    isWaiting: () => waiting.current !== undefined,
  };
}
