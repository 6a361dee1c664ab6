import { useCallback, useLayoutEffect, useRef } from 'react';

/** The same function from first to last, so that parts that are handed it stand still; it does what the newest one does. */
export function useSteady<Told extends unknown[], Answer>(
  newest: (...told: Told) => Answer,
): (...told: Told) => Answer {
  const held = useRef(newest);
  useLayoutEffect(() => {
    held.current = newest;
  });
  return useCallback((...told: Told) => held.current(...told), []);
}
