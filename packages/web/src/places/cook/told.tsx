import type { ReactNode } from 'react';

/** A choice with its question above it. */
export function Told(props: { label: string; children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noLabelWithoutControl: the select is its child
    <label className="written-figure">
      <span>{props.label}</span>
      {props.children}
    </label>
  );
}
