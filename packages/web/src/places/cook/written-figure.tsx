import { type Kind, type Limits, type Quantity, quantity } from '@pitwright/model';
import { useId } from 'react';
import { useDraft } from '../../parts/draft.ts';
import { readFigure } from '../../parts/read-figure.ts';
import { useWords } from '../../words.tsx';

/** As it is written by hand and read again: half the world reads a comma between digits as a decimal point. */
const legible = (printed: string): string =>
  printed.replace(/(\d),(?=\d{3})/g, '$1').replaceAll('\u00a0', ' ');

/** A figure with its unit, written by hand. Kept when it reads and lies between its limits; emptied, it is not told. */
export function WrittenFigure<K extends Kind>(props: {
  label: string;
  /** The label is heard, not seen: its column or line says it. */
  hideLabel?: boolean;
  kind: K;
  value: Quantity<K> | undefined;
  limits: Limits;
  /** As it might be written: shown where nothing is. */
  example: Quantity<K>;
  /** Never empty: what is told stays until another figure is. */
  isNeeded?: boolean;
  /** What is worth a second look in the figure as it is kept. */
  remark?: string | undefined;
  onKeep: (value: Quantity<K> | undefined) => void;
}) {
  const { text, print } = useWords();
  const id = useId();
  const { kind, value, limits, isNeeded = false } = props;
  const written = value ? legible(print.quantity(value)) : '';
  const { draft, line, onEnter } = useDraft(written, () => keep());
  const reading = readFigure(draft, kind, limits, print.settings.units);
  const isEmpty = draft.trim() === '';
  const example = legible(print.quantity(props.example));
  const problem = isEmpty
    ? isNeeded
      ? text('web.figure.unread', { example })
      : undefined
    : reading.ok
      ? undefined
      : reading.why === 'outside'
        ? text('web.figure.outside', {
            low: print.quantity(quantity(kind, limits.min, limits.unit)),
            high: print.quantity(quantity(kind, limits.max, limits.unit)),
          })
        : text('web.figure.unread', { example });
  const keep = () => {
    if (problem) return;
    if (isEmpty) props.onKeep(undefined);
    else if (reading.ok) props.onKeep(reading.quantity);
  };
  return (
    <span className="written-figure">
      <label htmlFor={id} className={props.hideLabel ? 'vh' : undefined}>
        {props.label}
      </label>
      <input
        id={id}
        className="cell-write"
        autoComplete="off"
        {...line}
        placeholder={isNeeded ? undefined : text('web.figure.such', { example })}
        aria-invalid={problem ? true : undefined}
        aria-describedby={problem || props.remark ? `${id}-said` : undefined}
        onKeyDown={onEnter}
      />
      {problem ? (
        <span className="field-error small" id={`${id}-said`}>
          {problem}
        </span>
      ) : props.remark ? (
        <span className="field-remark small" id={`${id}-said`}>
          {props.remark}
        </span>
      ) : null}
    </span>
  );
}
