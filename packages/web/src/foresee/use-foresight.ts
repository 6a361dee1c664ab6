import type { Cook } from '@pitwright/model';
import { useEffect, useRef, useState } from 'react';
import { ForesightFault, Foreteller } from './foreteller.ts';
import type { Foresight, Inside } from './messages.ts';

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

/** The inside of one piece, in a worker of its own so that the bands do not wait for it. */
export function useInside(cook: Cook | undefined, pieceId: string | undefined): Inside | undefined {
  const foreteller = useRef<Foreteller>(undefined);
  const [inside, setInside] = useState<Inside>();
  useEffect(() => () => foreteller.current?.close(), []);
  useEffect(() => {
    if (!cook || pieceId === undefined) return;
    foreteller.current ??= new Foreteller();
    foreteller.current.stop();
    let isWanted = true;
    foreteller.current
      .inside(cook, pieceId)
      .then((answer) => {
        if (isWanted) setInside(answer);
      })
      .catch((fault: unknown) => console.error(fault));
    return () => {
      isWanted = false;
    };
  }, [cook, pieceId]);
  return inside?.pieceId === pieceId ? inside : undefined;
}
