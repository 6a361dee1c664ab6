import { useRef, useState } from 'react';
import { useWords } from '../words.tsx';
import { Key } from './key.tsx';

/** A count moved by − and +, for hands that do not type. */
export function Stepper(props: {
  what: string;
  value: number;
  min: number;
  max: number;
  step?: number;
  show?: (value: number) => string;
  /** What it gives back is waited for: until then the next tap counts on from here. */
  onStep: (value: number) => unknown;
  atPit?: boolean;
}) {
  const { text } = useWords();
  const { min, max, step = 1, what, onStep, atPit = false } = props;
  // Taps come faster than they are written down: each counts from the one before it, not from what is kept by then.
  const [ahead, setAhead] = useState<number>();
  const latest = useRef<number>(undefined);
  const value = ahead ?? props.value;
  const move = async (by: number) => {
    const next = (latest.current ?? props.value) + by;
    if (next < min - 1e-9 || next > max + 1e-9) return;
    latest.current = next;
    setAhead(next);
    await onStep(next);
    if (latest.current !== next) return;
    latest.current = undefined;
    setAhead(undefined);
  };
  return (
    <span className="stepper">
      <Key
        kind="square"
        atPit={atPit}
        aria-label={text('web.one-fewer', { what })}
        disabled={value - step < min - 1e-9}
        onClick={() => void move(-step)}
      >
        −
      </Key>
      <output aria-live="polite">{props.show ? props.show(value) : value}</output>
      <Key
        kind="square"
        atPit={atPit}
        aria-label={text('web.one-more', { what })}
        disabled={value + step > max + 1e-9}
        onClick={() => void move(step)}
      >
        +
      </Key>
    </span>
  );
}
