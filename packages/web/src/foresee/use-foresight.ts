import type { Zone } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import { useEffect, useRef, useState } from 'react';
import { ForesightFault, Foreteller } from './foreteller.ts';
import type { Closer, Foresight, Inside } from './messages.ts';

/** A first frame at once, a preview, then the range that is kept. The same seed: only the change is seen. */
export const FIRST_MEMBERS = 16;
export const PREVIEW_MEMBERS = 40;
export const FULL_MEMBERS = 200;

export interface Foreseen {
  /** The newest there is; it may be of the cook as it was a moment ago. */
  readonly foresight: Foresight | undefined;
  /** Of the cook as given, with all members. */
  readonly isFull: boolean;
  readonly fault: ForesightFault | undefined;
}

/**
 * What the cook will do, refined in steps. While `isHeld` (something is being dragged) it stops at the preview; a
 * change in the middle of a preview lets that preview end first, so that the bands keep following the hand.
 */
export function useForesight(cook: Cook | undefined, isHeld: boolean): Foreseen {
  const foreteller = useRef<Foreteller>(undefined);
  const asked = useRef<{ cook: Cook; isHeld: boolean }>(undefined);
  const isRunning = useRef(false);
  const [seen, setSeen] = useState<{ foresight?: Foresight; fault?: ForesightFault }>({});

  useEffect(() => () => foreteller.current?.close(), []);

  useEffect(() => {
    if (!cook) return;
    asked.current = { cook, isHeld };
    const run = async () => {
      if (isRunning.current) return;
      isRunning.current = true;
      foreteller.current ??= new Foreteller();
      let done: { cook: Cook; members: number } | undefined;
      for (;;) {
        const now = asked.current;
        const steps = now?.isHeld
          ? [FIRST_MEMBERS, PREVIEW_MEMBERS]
          : [FIRST_MEMBERS, PREVIEW_MEMBERS, FULL_MEMBERS];
        const members = steps.find((step) => done?.cook !== now?.cook || step > (done?.members ?? 0));
        if (!now || members === undefined) break;
        done = { cook: now.cook, members };
        try {
          const foresight = await foreteller.current.foresee(now.cook, members, members === FULL_MEMBERS);
          setSeen({ foresight });
        } catch (fault) {
          if (!(fault instanceof ForesightFault)) throw fault;
          // What fewer members of the same cook told still stands.
          setSeen((before) => (before.foresight?.cook === now.cook ? before : { fault }));
        }
      }
      isRunning.current = false;
    };
    void run();
  }, [cook, isHeld]);

  return {
    foresight: seen.foresight,
    isFull: seen.foresight?.cook === cook && seen.foresight?.members === FULL_MEMBERS,
    fault: seen.fault,
  };
}

export interface SeenClose {
  readonly inside?: Inside | undefined;
  readonly closer?: Closer | undefined;
}

/**
 * One piece seen close, in a worker of its own so that the bands do not wait for it: its inside first, then what would
 * narrow its range.
 *
 * @param zone the muscle whose inside is shown; missing: the whole
 */
export function useClose(cook: Cook, pieceId: string | undefined, zone: Zone | undefined): SeenClose {
  const foreteller = useRef<Foreteller>(undefined);
  const [inside, setInside] = useState<Inside>();
  const [closer, setCloser] = useState<{ of: Cook; seen: Closer }>();
  const told = useRef<{ of: Cook; seen: Closer }>(undefined);
  useEffect(() => () => foreteller.current?.close(), []);
  useEffect(() => {
    if (pieceId === undefined) return;
    foreteller.current ??= new Foreteller();
    const own = foreteller.current;
    own.stop();
    let isWanted = true;
    const look = async () => {
      const seen = await own.inside(cook, pieceId, zone);
      if (isWanted) setInside(seen);
      if (!isWanted || (told.current?.of === cook && told.current.seen.pieceId === pieceId)) return;
      const close = { of: cook, seen: await own.closer(cook, pieceId) };
      if (!isWanted) return;
      told.current = close;
      setCloser(close);
    };
    look().catch((fault: unknown) => console.error(fault));
    return () => {
      isWanted = false;
    };
  }, [cook, pieceId, zone]);
  return {
    ...(inside?.pieceId === pieceId && inside?.zone === zone && { inside }),
    ...(closer?.seen.pieceId === pieceId && { closer: closer?.seen }),
  };
}
