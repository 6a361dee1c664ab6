import { type ReactNode, useEffect, useId, useRef, useState } from 'react';
import { createPortal } from 'react-dom';
import { useWords } from '../words.tsx';
import { Key } from './key.tsx';

/** What a figure rests on. */
export interface Origin {
  readonly meaning: string;
  readonly source: string;
  readonly doubt: string;
}

/** A figure that can be asked: opens what it is, where it is from and how sure it is. */
export function Ask(props: { origin: Origin; children: ReactNode }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <button type="button" className="ask" aria-haspopup="dialog" onClick={() => setOpen(true)}>
        {props.children}
      </button>
      {isOpen
        ? // Beside the page, not inside the sentence that asks: a heading holds no dialog.
          createPortal(<Asked {...props} onClose={() => setOpen(false)} />, document.body)
        : null}
    </>
  );
}

function Asked(props: { origin: Origin; children: ReactNode; onClose: () => void }) {
  const { text } = useWords();
  const sheet = useRef<HTMLDialogElement>(null);
  const title = useId();
  useEffect(() => {
    if (!sheet.current?.open) sheet.current?.showModal();
  }, []);
  return (
    <dialog className="asked" ref={sheet} aria-labelledby={title} onClose={props.onClose}>
      <h2 id={title}>{props.children}</h2>
      <dl>
        <dt>{text('web.ask.meaning')}</dt>
        <dd>{props.origin.meaning}</dd>
        <dt>{text('web.ask.source')}</dt>
        <dd>{props.origin.source}</dd>
        <dt>{text('web.ask.doubt')}</dt>
        <dd>{props.origin.doubt}</dd>
      </dl>
      <Key kind="first" onClick={() => sheet.current?.close()}>
        {text('web.close')}
      </Key>
    </dialog>
  );
}
