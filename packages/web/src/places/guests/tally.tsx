const PITCH = 6;
const HEIGHT = 20;
const MOST = 15;

/** A count as strokes in fives, for the eye; past fifteen the figure alone stands. */
export function Tally(props: { count: number }) {
  const { count } = props;
  if (count === 0 || count > MOST) return null;
  const fives = Math.floor(count / 5);
  const x = (stroke: number) => 3 + stroke * PITCH + Math.floor(stroke / 5) * 6;
  const strokes = Array.from({ length: count }, (_, stroke) => stroke).filter((stroke) => stroke % 5 !== 4);
  return (
    <svg className="tally" width={x(count - 1) + 4} height={HEIGHT} aria-hidden="true">
      {strokes.map((stroke) => (
        <line key={stroke} x1={x(stroke)} x2={x(stroke)} y1={2} y2={HEIGHT - 2} className="range" />
      ))}
      {Array.from({ length: fives }, (_, five) => five).map((five) => (
        <line
          key={`five-${five}`}
          x1={x(five * 5) - 3}
          x2={x(five * 5 + 3) + 3}
          y1={HEIGHT - 4}
          y2={4}
          className="range"
        />
      ))}
    </svg>
  );
}
