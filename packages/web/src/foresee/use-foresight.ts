import type { Zone } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import { useCallback, useEffect, useRef, useState } from 'react';
import type { ForesightFault } from './asked-worker.ts';
import { Foreteller } from './foreteller.ts';
import type { Closer, Foresight, Inside } from './messages.ts';
import { Pursuit } from './pursuit.ts';

export interface Foreseen {
  /** The newest there is; it may be of the cook as it was a moment ago. */
  readonly foresight: Foresight | undefined;
  /** Of the cook as given, with all members and its jobs settled. */
  readonly isFull: boolean;
  readonly fault: ForesightFault | undefined;
  /** Asks about a cook that the hand just made, before the page has drawn it; it must be the one shown next. */
  readonly askAhead: (cook: Cook) => void;
}

/** What the cook will do, refined in steps; while `isHeld` (something is being dragged) it stops at the preview. */
export function useForesight(cook: Cook | undefined, isHeld: boolean): Foreseen {
  const pursuit = useRef<Pursuit>(undefined);
  const [seen, setSeen] = useState<{ foresight?: Foresight; fault?: ForesightFault }>({});

  // Made and ended by the effect alone: a page that is mounted twice gets a second one that works.
  useEffect(() => {
    pursuit.current = new Pursuit(
      (foresight) => setSeen({ foresight }),
      // What fewer members of the same cook told still stands.
      (of, fault) => setSeen((before) => (before.foresight?.cook === of ? before : { fault })),
    );
    return () => pursuit.current?.close();
  }, []);
  useEffect(() => {
    if (cook) pursuit.current?.ask({ cook, isHeld });
  }, [cook, isHeld]);

  const askAhead = useCallback((ahead: Cook) => pursuit.current?.ask({ cook: ahead, isHeld: true }), []);

  return {
    askAhead,
    foresight: seen.foresight,
    isFull: seen.foresight?.cook === cook && seen.foresight?.isWhole === true,
    fault: seen.fault,
  };
}

/** Something seen of a piece, and the cook it was seen in: until the new look stands, the one before the last change. */
interface Seen<T> {
  readonly seen: T;
  readonly cook: Cook;
}

export interface SeenClose {
  readonly inside?: Inside | undefined;
  readonly closer?: Closer | undefined;
  /** A new look is under way; what is shown was seen before the last change, or of another muscle. */
  readonly isAgain: boolean;
}

/**
 * One piece seen close, in a worker of its own so that the bands do not wait for it: its inside first, then what would
 * narrow its range. What was seen stays until the new look stands.
 *
 * @param zone the muscle whose inside is shown; missing: the whole
 */
export function useClose(cook: Cook, pieceId: string | undefined, zone: Zone | undefined): SeenClose {
  const foreteller = useRef<Foreteller>(undefined);
  const insides = useSeen<Inside>();
  const closers = useSeen<Closer>();
  const insideKey = JSON.stringify([pieceId, zone]);
  const closerKey = pieceId ?? '';
  const lastKey = JSON.stringify([pieceId]);
  useEffect(() => {
    foreteller.current = new Foreteller();
    return () => foreteller.current?.close();
  }, []);
  useEffect(() => {
    const own = foreteller.current;
    if (pieceId === undefined || !own) return;
    own.stop();
    const look = async () => {
      const inside = await own.inside(cook, pieceId, zone);
      if (!inside) return;
      insides.keep(lastKey, { seen: inside, cook });
      insides.keep(insideKey, { seen: inside, cook });
      if (closers.of(closerKey)?.cook === cook) return;
      const closer = await own.closer(cook, pieceId);
      if (closer) closers.keep(closerKey, { seen: closer, cook });
    };
    look().catch((fault: unknown) => console.error(fault));
  }, [cook, pieceId, zone, insideKey, closerKey, lastKey, insides, closers]);
  // Another muscle is looked at: the one before it stays until then.
  const inside = insides.of(insideKey) ?? insides.of(lastKey);
  return {
    inside: inside?.seen,
    closer: closers.of(closerKey)?.seen,
    isAgain: inside !== undefined && (inside.cook !== cook || inside.seen.zone !== zone),
  };
}

interface SeenByKey<T> {
  readonly of: (key: string) => Seen<T> | undefined;
  readonly keep: (key: string, seen: Seen<T>) => void;
}

/** The last of each that was seen; what keeps it stays the same object. */
function useSeen<T>(): SeenByKey<T> {
  const [, setCount] = useState(0);
  return useState<SeenByKey<T>>(() => {
    const all = new Map<string, Seen<T>>();
    return {
      of: (key) => all.get(key),
      keep: (key, seen) => {
        all.set(key, seen);
        setCount((count) => count + 1);
      },
    };
  })[0];
}
