import type { Cook } from '@pitwright/model';
import { useEffect, useMemo, useRef, useState } from 'react';
import type { ForesightFault } from '../../foresee/asked-worker.ts';
import type { Foresight } from '../../foresee/messages.ts';
import { useForesight } from '../../foresee/use-foresight.ts';
import type { SettleAnswer, SettleAsk } from './settle-messages.ts';

export interface RunSheet {
  /** Of the cook as given, or as it was a moment ago. */
  readonly foresight: Foresight | undefined;
  readonly isSettled: boolean;
  readonly isFull: boolean;
  readonly fault: ForesightFault | undefined;
}

const hasPins = (cook: Cook): boolean => Object.keys(cook.pinned ?? {}).length > 0;

/** The cook without what hands pinned on the run sheet; the same object as long as nothing else changes. */
function useUnpinned(cook: Cook): Cook {
  const { pinned: _, ...matter } = cook;
  const key = JSON.stringify(matter);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key is the matter
  return useMemo(() => matter, [key]);
}

/**
 * The days as they lie. What the pieces do is foreseen without the pins and kept; a pin only places the jobs anew, in
 * a worker, and the newest pin is the one that counts.
 */
export function useRunSheet(cook: Cook): RunSheet {
  const unpinned = useUnpinned(cook);
  const { foresight: free, isFull, fault } = useForesight(unpinned, false);
  const worker = useRef<Worker>(undefined);
  const [settled, setSettled] = useState<Foresight>();

  useEffect(() => () => worker.current?.terminate(), []);

  useEffect(() => {
    // A first glance with few members moves about: pins are laid over the whole count.
    if (!free || !isFull || !hasPins(cook)) return;
    worker.current?.terminate();
    const settling = new Worker(new URL('./settle.worker.ts', import.meta.url), { type: 'module' });
    worker.current = settling;
    settling.onmessage = ({ data }: MessageEvent<SettleAnswer>) => {
      if ('plan' in data) setSettled({ ...free, cook, plan: data.plan });
      else console.error(data.fault);
    };
    settling.postMessage({ report: free, cook } satisfies SettleAsk);
    return () => settling.terminate();
  }, [free, isFull, cook]);

  if (!hasPins(cook)) return { foresight: free, isSettled: isFull, isFull, fault };
  return {
    foresight: settled ?? free,
    isSettled: settled?.cook === cook,
    isFull: isFull && settled?.cook === cook,
    fault,
  };
}
