import { type ChangeEvent, type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { useLeaving } from './leaving.ts';

type Line = HTMLInputElement | HTMLTextAreaElement;

/**
 * What is being written on a line. It is kept on Enter and when the line or the page is left: each wording once, however
 * many of these come before it has reached the disk.
 */
export function useDraft(written: string, keep: (draft: string) => void) {
  const [draft, setDraft] = useState(written);
  const told = useRef(written);
  useEffect(() => {
    told.current = written;
    setDraft(written);
  }, [written]);
  const tell = () => {
    if (draft === told.current) return;
    told.current = draft;
    keep(draft);
  };
  useLeaving(tell);
  return {
    draft,
    line: {
      value: draft,
      onChange: (event: ChangeEvent<Line>) => setDraft(event.target.value),
      onBlur: tell,
    },
    onEnter: (event: KeyboardEvent) => {
      if (event.key === 'Enter') tell();
    },
  };
}
