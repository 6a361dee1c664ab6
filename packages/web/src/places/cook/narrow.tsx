import type { Measure, Narrowing } from '@pitwright/engine';
import { type Cook, PIECE_LIMITS, PIT_LIMITS, type Piece, quantity } from '@pitwright/model';
import type { Closer } from '../../foresee/messages.ts';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';
import { setAtGrate, setPiece } from './edit.ts';
import { usualMass, usualThickness } from './usual.ts';
import { WrittenFigure } from './written-figure.tsx';

/** Worth a field of its own: it takes this share off the range or more. */
const WORTH_ASKING = 0.05;
const MOST_FIELDS = 2;

const isWorth = ({ widthS }: Narrowing, nowS: number): boolean =>
  Number.isFinite(widthS) && (!Number.isFinite(nowS) || widthS < (1 - WORTH_ASKING) * nowS);

/** Which one measurement would narrow the range of a piece most, and the lines to write it on. */
export function NarrowIt(props: {
  cook: Cook;
  piece: Piece;
  sensitivity: Closer['sensitivity'];
  onKeep: (cook: Cook) => void;
}) {
  const { print } = useWords();
  const { sensitivity } = props;
  if (!sensitivity.said) return null;
  const asked = sensitivity.narrowings
    .filter((narrowing) => isWorth(narrowing, sensitivity.widthS))
    .slice(0, MOST_FIELDS);
  return (
    <div className="narrow">
      <p>{saidWords(sensitivity.said, print)}</p>
      {asked.length > 0 ? (
        <div className="written-figures">
          {asked.map(({ measure }) => (
            <MeasureLine key={measure} measure={measure} {...props} />
          ))}
        </div>
      ) : null}
    </div>
  );
}

function MeasureLine(props: { measure: Measure; cook: Cook; piece: Piece; onKeep: (cook: Cook) => void }) {
  const { text } = useWords();
  const { measure, cook, piece, onKeep } = props;
  const label = text(`web.measure.${measure}`);
  switch (measure) {
    case 'ruler':
      return (
        <WrittenFigure
          label={label}
          kind="length"
          value={piece.thickness}
          limits={PIECE_LIMITS.thickness}
          example={usualThickness(piece.cut)}
          onKeep={(thickness) => onKeep(setPiece(cook, piece.id, { thickness }))}
        />
      );
    case 'scales':
      return (
        <WrittenFigure
          label={label}
          kind="mass"
          value={piece.mass}
          limits={PIECE_LIMITS.mass}
          example={usualMass(piece.cut)}
          onKeep={(mass) => onKeep(setPiece(cook, piece.id, { mass }))}
        />
      );
    case 'start-probe':
      return (
        <WrittenFigure
          label={label}
          kind="temperature"
          value={piece.start}
          limits={PIECE_LIMITS.start}
          example={quantity('temperature', 5, '°C')}
          onKeep={(start) => onKeep(setPiece(cook, piece.id, { start }))}
        />
      );
    case 'grate-probe':
      return (
        <WrittenFigure
          label={label}
          kind="temperature"
          value={undefined}
          limits={PIT_LIMITS.temperature}
          example={cook.pit.temperature}
          onKeep={(temperature) => {
            if (temperature) onKeep(setAtGrate(cook, piece.id, temperature));
          }}
        />
      );
  }
}
