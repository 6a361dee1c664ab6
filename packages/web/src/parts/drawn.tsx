import type { Drawing, Mark } from '@pitwright/draw';
import { createElement, type ReactNode } from 'react';
import { HiddenFigures } from './figures.tsx';

function element(mark: Mark, key: number): ReactNode {
  const inner = mark.children?.map(element) ?? [];
  return createElement(mark.tag, { key, ...mark.attributes }, mark.text, ...inner);
}

/**
 * A drawing of packages/draw on the page: an image with one sentence, its figures as a table for the ear, and, over
 * it, what can be taken hold of.
 */
export function Drawn(props: { drawing: Drawing; caption?: string; children?: ReactNode }) {
  const { width, height, marks, sentence, table } = props.drawing;
  return (
    <div className="drawing" style={{ width }}>
      <svg role="img" aria-label={sentence} width={width} height={height} viewBox={`0 0 ${width} ${height}`}>
        {marks.map(element)}
      </svg>
      <HiddenFigures table={{ caption: props.caption ?? sentence, columns: table.head, rows: table.rows }} />
      {props.children}
    </div>
  );
}
