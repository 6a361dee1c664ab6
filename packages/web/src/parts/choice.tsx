import { useId } from 'react';

export interface Option<T extends string> {
  readonly value: T;
  readonly text: string;
  readonly note?: string | undefined;
}

/** One of a few, all in sight: radio buttons drawn as one ruled row. */
export function Choice<T extends string>(props: {
  legend: string;
  hideLegend?: boolean;
  value: T;
  onChoose: (value: T) => void;
  options: readonly Option<T>[];
}) {
  const name = useId();
  return (
    <fieldset>
      <legend className={props.hideLegend ? 'vh' : 'choice-legend'}>{props.legend}</legend>
      <div className="choice">
        {props.options.map((option) => (
          <label key={option.value}>
            <input
              type="radio"
              name={name}
              value={option.value}
              checked={option.value === props.value}
              onChange={() => props.onChoose(option.value)}
            />
            <span>{option.text}</span>
            {option.note ? <small>{option.note}</small> : null}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
