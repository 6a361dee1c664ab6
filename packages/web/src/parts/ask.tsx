import { type ReactNode, useId, useRef } from 'react';
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
  const { text } = useWords();
  const sheet = useRef<HTMLDialogElement>(null);
  const title = useId();
  return (
    <>
      <button type="button" className="ask" aria-haspopup="dialog" onClick={() => sheet.current?.showModal()}>
        {props.children}
      </button>
      <dialog className="asked" ref={sheet} aria-labelledby={title}>
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
    </>
  );
}
