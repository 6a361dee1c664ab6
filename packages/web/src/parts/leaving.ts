import { useEffect, useRef } from 'react';

const acts = new Set<() => void>();
let isLeft = false;

function leave(): void {
  if (isLeft) return;
  isLeft = true;
  for (const act of acts) act();
}
// A phone hides a page and may never show it again: hidden is the last that a page can count on hearing.
addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'hidden') leave();
  else isLeft = false;
});
addEventListener('pagehide', leave);
addEventListener('pageshow', () => {
  isLeft = false;
});

/** Does the newest `act` when the page is closed or hidden behind another, or its place is left. */
export function useLeaving(act: () => void): void {
  const newest = useRef(act);
  newest.current = act;
  useEffect(() => {
    const doIt = () => newest.current();
    acts.add(doIt);
    return () => {
      acts.delete(doIt);
      doIt();
    };
  }, []);
}
