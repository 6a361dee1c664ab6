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
  onStep: (value: number) => void;
  atPit?: boolean;
}) {
  const { text } = useWords();
  const { value, min, max, step = 1, what, onStep, atPit = false } = props;
  return (
    <span className="stepper">
      <Key
        kind="square"
        atPit={atPit}
        aria-label={text('web.one-fewer', { what })}
        disabled={value - step < min - 1e-9}
        onClick={() => onStep(value - step)}
      >
        −
      </Key>
      <output aria-live="polite">{props.show ? props.show(value) : value}</output>
      <Key
        kind="square"
        atPit={atPit}
        aria-label={text('web.one-more', { what })}
        disabled={value + step > max + 1e-9}
        onClick={() => onStep(value + step)}
      >
        +
      </Key>
    </span>
  );
}
