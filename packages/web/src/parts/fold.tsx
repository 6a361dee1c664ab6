import type { ReactNode } from 'react';
import { useIsNarrow } from './narrow.ts';

/** A long part of a page under its heading: open at the desk, folded on a phone, and turned by a press on either. */
export function Fold(props: { heading: string; count?: string; children: ReactNode }) {
  const isNarrow = useIsNarrow();
  return (
    <details className="fold" open={!isNarrow}>
      <summary>
        <h2>{props.heading}</h2>
        {props.count ? <span className="quiet">{props.count}</span> : null}
      </summary>
      {props.children}
    </details>
  );
}
