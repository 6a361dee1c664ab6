import type { ButtonHTMLAttributes } from 'react';

type KeyProps = ButtonHTMLAttributes<HTMLButtonElement> & {
  readonly kind?: 'first' | 'plain' | 'square' | undefined;
  /** 64 px, for gloves. */
  readonly atPit?: boolean;
};

/** A key to press: 44 px at the desk, 64 px at the pit. */
export function Key({ kind, atPit, className, ...rest }: KeyProps) {
  const classes = ['key', kind, atPit && 'pit', className].filter(Boolean).join(' ');
  return <button type="button" {...rest} className={classes} />;
}
