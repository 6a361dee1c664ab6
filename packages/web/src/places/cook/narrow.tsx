import type { Measure, Narrowing } from '@pitwright/engine';
import { type Cook, PIECE_LIMITS, PIT_LIMITS, type Piece, quantity } from '@pitwright/model';
import { useState } from 'react';
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
  /** Missing while it is looked at first. */
  sensitivity: Closer['sensitivity'] | undefined;
  onKeep: (cook: Cook) => void;
}) {
  const { text, print } = useWords();
  const { sensitivity } = props;
  /** A line that was asked once stays while the piece is open: it may be the one that is being written on. */
  const [asked, setAsked] = useState<readonly Measure[]>([]);
  if (!sensitivity)
    return (
      <div className="narrow waiting">
        <p className="quiet">{text('web.inside.waiting')}</p>
      </div>
    );
  const worth = sensitivity.narrowings
    .filter((narrowing) => isWorth(narrowing, sensitivity.widthS))
    .slice(0, MOST_FIELDS)
    .map(({ measure }) => measure);
  const all = sensitivity.said ? [...new Set([...asked, ...worth])] : asked;
  if (all.length > asked.length) setAsked(all);
  if (!sensitivity.said && all.length === 0) return null;
  return (
    <div className="narrow">
      {sensitivity.said ? <p>{saidWords(sensitivity.said, print)}</p> : null}
      {all.length > 0 ? (
        <div className="written-figures">
          {all.map((measure) => (
            <MeasureLine key={measure} measure={measure} {...props} />
          ))}
        </div>
      ) : null}
    </div>
  );
}

/** Elsewhere than in the middle what was measured stands as a difference to it. */
const isToldAtGrate = (cook: Cook, piece: Piece): boolean =>
  cook.pit.gauge === 'grate' && (piece.place ?? 'middle') === 'middle';

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
          value={isToldAtGrate(cook, piece) ? cook.pit.temperature : undefined}
          limits={PIT_LIMITS.temperature}
          example={cook.pit.temperature}
          onKeep={(temperature) => {
            if (temperature) onKeep(setAtGrate(cook, piece.id, temperature));
          }}
        />
      );
  }
}
