import type { ReactNode } from 'react';

/** The one sentence a place opens with, and what stands quietly at its right. */
export function Answer(props: { children: ReactNode; aside?: ReactNode; live?: boolean }) {
  return (
    <div className="top">
      <h1 className="answer" aria-live={props.live ? 'polite' : undefined}>
        {props.children}
      </h1>
      {props.aside ? <div className="quiet">{props.aside}</div> : null}
    </div>
  );
}
