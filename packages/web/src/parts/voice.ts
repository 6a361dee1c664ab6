import type { Voice } from '@pitwright/draw';
import { chartVoice } from '@pitwright/words';
import { useMemo } from 'react';
import { usePrinter } from '../words.tsx';

/** The words of drawings as this reader writes. */
export function useVoice(): Voice {
  const { settings } = usePrinter();
  return useMemo(() => chartVoice(settings), [settings]);
}
