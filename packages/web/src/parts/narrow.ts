import { useSyncExternalStore } from 'react';

/** As in the style sheets: under this width a page is one column and folds what is long. */
const NARROW = '(max-width: 700px)';

function onTurn(tell: () => void): () => void {
  const query = matchMedia(NARROW);
  query.addEventListener('change', tell);
  return () => query.removeEventListener('change', tell);
}

/** Whether the window is as narrow as a phone. */
export const useIsNarrow = (): boolean => useSyncExternalStore(onTurn, () => matchMedia(NARROW).matches);
