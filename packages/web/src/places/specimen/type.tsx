import { useWords } from '../../words.tsx';

const SIZES = ['t6', 't5', 't4', 't3', 't2', 't1'] as const;

export function Type() {
  const { text } = useWords();
  return (
    <div>
      <h3>{text('web.specimen.type')}</h3>
      {SIZES.map((size) => (
        <div key={size} className="type-row">
          <span className="quiet small">{text(`web.specimen.${size}.for`)}</span>
          <span style={{ fontSize: `var(--${size})`, lineHeight: 1.1 }}>{text(`web.specimen.${size}`)}</span>
        </div>
      ))}
    </div>
  );
}
