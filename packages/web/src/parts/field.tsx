import { type InputHTMLAttributes, type ReactNode, useId } from 'react';

type FieldProps = InputHTMLAttributes<HTMLInputElement> & {
  readonly label: ReactNode;
  /** What is wrong and what would be right. */
  readonly problem?: string | undefined;
  /** What is worth a second look, where there is no problem. */
  readonly remark?: string | undefined;
};

/** A line to write on. */
export function Field({ label, problem, remark, ...input }: FieldProps) {
  const id = useId();
  return (
    <div className={problem ? 'field bad' : 'field'}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        autoComplete="off"
        {...input}
        aria-invalid={problem ? true : undefined}
        aria-describedby={problem || remark ? `${id}-said` : undefined}
      />
      {problem ? (
        <span className="field-error" id={`${id}-said`}>
          {problem}
        </span>
      ) : remark ? (
        <span className="field-remark small" id={`${id}-said`}>
          {remark}
        </span>
      ) : null}
    </div>
  );
}

/** One of many, in the platform's own list. */
export function Pick(props: {
  label: ReactNode;
  value: string;
  onPick: (value: string) => void;
  options: readonly { readonly value: string; readonly text: string }[];
}) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{props.label}</label>
      <select id={id} value={props.value} onChange={(event) => props.onPick(event.target.value)}>
        {props.options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.text}
          </option>
        ))}
      </select>
    </div>
  );
}
