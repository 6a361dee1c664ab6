/** One of a few words. */
export function Picked(props: {
  label: string;
  value: string;
  options: readonly { readonly value: string; readonly text: string }[];
  onPick: (value: string) => void;
}) {
  return (
    <label className="written-figure">
      <span>{props.label}</span>
      <select
        className="cell-pick"
        value={props.value}
        onChange={(event) => props.onPick(event.target.value)}
      >
        {props.options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.text}
          </option>
        ))}
      </select>
    </label>
  );
}
